using System.Text.RegularExpressions;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Advice;

/// <summary>Does to a week what a smallest change says in words.</summary>
internal static partial class FollowedChange
{
    /// <summary>The week as the sentence would have it; null where it is no such sentence.</summary>
    public static WeekUnderReview? Of(string text, WeekUnderReview week)
    {
        if (Whole().Match(text) is not { Success: true } match)
            return null;
        var what = Alike().Replace(match.Groups["what"].Value, "$1 ride $3 and $2 ride $3");
        what = AlikeAtTheirHours().Replace(what, "$1 $3 and $2 $3");
        if (Swap().Match(what) is { Success: true } swap)
        {
            var (a, b) = (Ride(swap.Groups["a"].Value, week), Ride(swap.Groups["b"].Value, week));
            return week.Each(r => [r == a ? ChangedRide.On(r, b.Date) : r == b ? ChangedRide.On(r, a.Date) : r]);
        }
        var done = new Dictionary<string, RideFigures?>();
        foreach (Match part in Part().Matches(what))
        {
            var ride = Ride(part.Groups["ride"].Value, week);
            done.Add(ride.File, Done(part, ride, week));
        }
        // Every word of the sentence must have been understood.
        Assert.Matches(@"^[ ,]*(and)?[ ,]*(and)?( instead)?$", Part().Replace(what, ""));
        return week.Each(r => !done.TryGetValue(r.File, out var now) ? [r] : now is null ? [] : [now]);
    }

    /// <summary>The rules that the sentence says it would have kept, by their short names.</summary>
    public static string[] Keeps(string text) =>
        Whole().Match(text) is { Success: true } match ? match.Groups["rules"].Value.Split([", ", " and "], StringSplitOptions.None) : [];

    private static RideFigures? Done(Match part, RideFigures ride, WeekUnderReview week)
    {
        var limits = week.Plan.Limits;
        if (part.Groups["to"] is { Success: true } to)
            return ChangedRide.On(ride, Printed.Day(to.Value, week));
        if (part.Groups["easy"].Success)
            return ChangedRide.Eased(ride, limits);
        if (part.Groups["out"].Success)
            return null;
        var seconds = Printed.Seconds(part.Groups["len"].Success ? part.Groups["len"].Value : part.Groups["long"].Value);
        if (part.Groups["long"].Success)
            return ChangedRide.Eased(ride with { DurationSeconds = seconds, ElapsedSeconds = ride.ElapsedSeconds + seconds - ride.DurationSeconds }, limits);
        var bands = ride.Bands + new BandSeconds(seconds - ride.DurationSeconds, 0, 0);
        return ride with
        {
            DurationSeconds = seconds,
            ElapsedSeconds = ride.ElapsedSeconds + seconds - ride.DurationSeconds,
            Stress = ride.Stress * seconds / ride.DurationSeconds,
            Bands = bands,
            LongEnough = KindOfRide.IsLongEnough(seconds, bands, limits),
        };
    }

    private static RideFigures Ride(string words, WeekUnderReview week)
    {
        var date = Printed.Days(words, week)[0];
        var hour = Hour().Match(words).Value;
        return Assert.Single(week.Week.Rides, r => r.Date == date && (hour.Length == 0 || $"{r.StartsAt.Hour:00}:{r.StartsAt.Minute:00}" == hour));
    }

    [GeneratedRegex(@"^(?<what>.*) would have kept the (?<rules>.*) rules?\.$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^(?<a>\w+day’s(?: \d\d:\d\d ride)?) and (?<b>\w+day’s(?: \d\d:\d\d)? rides?) swapped$")]
    private static partial Regex Swap();

    [GeneratedRegex(@"(?<ride>\w+day’s (?:\d\d:\d\d )?ride) (?:on (?<to>\w+day)(?: instead)?|(?<easy>ridden easy for the same time)|(?<out>left out)|lengthened to (?<len>[\dhmin ]*\d (?:h|min)) at its own easy pace|ridden as the long ride, (?<long>[\dhmin ]*\d (?:h|min)) and all of it easy,?)")]
    private static partial Regex Part();

    [GeneratedRegex(@"^(\w+day’s) and (\w+day’s) rides (ridden easy for the same time|left out)$")]
    private static partial Regex Alike();

    [GeneratedRegex(@"^(\w+day’s(?: \d\d:\d\d)? ride) and (\w+day’s(?: \d\d:\d\d)? ride) (ridden easy for the same time|left out)$")]
    private static partial Regex AlikeAtTheirHours();

    [GeneratedRegex(@"\d\d:\d\d")]
    private static partial Regex Hour();
}
