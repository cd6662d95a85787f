using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Formatting;

/// <summary>The words the document uses for what the core names in types.</summary>
public static class Words
{
    /// <summary>A verdict: <c>kept</c>, <c>watch</c>, <c>broken</c>, <c>not judged</c>.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Kept => "kept",
        Verdict.Watch => "watch",
        Verdict.Broken => "broken",
        _ => "not judged",
    };

    /// <summary>An evidence grade: <c>published study</c>, <c>handbook</c>, <c>common practice</c>.</summary>
    public static string Of(Evidence evidence) => evidence switch
    {
        Evidence.PublishedStudy => "published study",
        Evidence.Handbook => "handbook",
        _ => "common practice",
    };

    /// <summary>A kind of change: <c>move</c>, <c>swap</c>, <c>ease</c>, <c>lengthen</c>.</summary>
    public static string Of(ChangeKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>A tier: <c>low</c>, <c>middle</c>, <c>high</c>, <c>very high</c>.</summary>
    public static string Of(Tier tier) => tier == Tier.VeryHigh ? "very high" : tier.ToString().ToLowerInvariant();

    /// <summary>An experience: <c>new</c>, <c>regular</c>, <c>racing</c>.</summary>
    public static string Of(Experience experience) => experience.ToString().ToLowerInvariant();

    /// <summary>A day's kind in one word.</summary>
    public static string Of(DayKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>A ride's kind in one word; null for a ride too short to have one.</summary>
    public static string? Of(RideKind kind) => kind == RideKind.None ? null : kind.ToString().ToLowerInvariant();

    /// <summary>An exception: <c>lighter</c>, <c>event</c>, <c>away</c>.</summary>
    public static string Of(ExceptionKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>A sport in one word.</summary>
    public static string Of(RideSport sport) => sport == RideSport.EBike ? "e-bike" : sport.ToString().ToLowerInvariant();

    /// <summary>Where stress came from; null when unknown.</summary>
    public static string? Of(StressSource source) => source switch
    {
        StressSource.Power => "power",
        StressSource.HeartRate => "heart rate",
        StressSource.Rating => "rating",
        _ => null,
    };

    /// <summary>Where kind and bands came from; null when the ride is unrated.</summary>
    public static string? Of(MeasureSource source) => source switch
    {
        MeasureSource.Power => "power",
        MeasureSource.HeartRate => "heart rate",
        _ => null,
    };

    /// <summary>Where a threshold came from.</summary>
    public static string Of(ThresholdSource source) => source switch
    {
        ThresholdSource.RiderFile => "rider file",
        ThresholdSource.RiderFileFirstEntry => "rider file, first entry",
        ThresholdSource.Recording => "recording",
        _ => "estimate",
    };
}
