using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>A laid-out day as if it had been ridden exactly so, so that the rules can judge it.</summary>
/// <remarks>The intended intensities are common practice, no source: easy riding at 0.62 of threshold power, work around threshold at 0.88, high work at 1.03.</remarks>
internal static class PlannedRides
{
    private const double EasyShare = 0.62;
    private const double RecoveryShare = 0.52;
    private const double ThresholdShare = 0.88;
    private const double HighShare = 1.03;

    // Kinds, bands and stress are set here, so the power itself only has to be some power.
    private static readonly ThresholdInForce AnyThreshold = new(new Watts(200), ThresholdSource.RiderFile);

    public static DayFacts DayOf(LocalDate date, PlannedDay day, Limits limits) =>
        DayFacts.Build(date, day.Minutes > 0 ? [RideOf(date, day)] : [], 0, limits);

    public static double StressOf(PlannedDay day) => day.Minutes / 60.0 * Math.Pow(RatioOf(day), 2) * 100;

    private static RideFigures RideOf(LocalDate date, PlannedDay day)
    {
        var work = day.WorkMinutes * 60.0;
        var seconds = day.Minutes * 60.0;
        return new RideFigures
        {
            File = "planned",
            StartsAt = (date + new LocalTime(12, 0)).WithOffset(Offset.Zero),
            DurationSeconds = seconds,
            ElapsedSeconds = seconds,
            Kind = KindOf(day.Kind),
            KindFrom = KindSource.Power,
            LongEnough = day.Kind == DayKind.Long,
            MeasuredBy = MeasureSource.Power,
            NormalisedPower = new Watts(RatioOf(day) * AnyThreshold.Power.Value),
            MeanPowerW = RatioOf(day) * AnyThreshold.Power.Value,
            IntensityRatio = RatioOf(day),
            Stress = StressOf(day),
            StressFrom = StressSource.Power,
            Threshold = AnyThreshold,
            Bands = day.Kind == DayKind.High ? new BandSeconds(seconds - work, 0, work) : new BandSeconds(seconds - work, work, 0),
            AtThresholdShare = new SustainedTime(84, work, []),
            AtHighShare = new SustainedTime(105, day.Kind == DayKind.High ? work : 0, []),
            NearThreshold = new SustainedTime(91, day.Kind == DayKind.High ? work : 0, []),
            PowerCoverage = 1,
        };
    }

    private static RideKind KindOf(DayKind kind) => kind switch
    {
        DayKind.High => RideKind.High,
        DayKind.Threshold => RideKind.Threshold,
        DayKind.Long => RideKind.Long,
        DayKind.Recovery => RideKind.Recovery,
        _ => RideKind.Endurance,
    };

    private static double RatioOf(PlannedDay day)
    {
        if (day.Minutes == 0)
            return 0;
        var easy = day.Kind == DayKind.Recovery ? RecoveryShare : EasyShare;
        var hard = day.Kind == DayKind.High ? HighShare : ThresholdShare;
        var share = (double)day.WorkMinutes / day.Minutes;
        return Math.Pow(share * Math.Pow(hard, 4) + (1 - share) * Math.Pow(easy, 4), 0.25);
    }
}
