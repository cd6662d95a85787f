using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Report.Charts;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The weeks before and the reviewed one.</summary>
/// <param name="sheet">The paper.</param>
internal sealed class TrendSection(ReviewDocument review, FontSet fonts, Sheet sheet)
{
    private const float ChartGap = 8;
    private const float FirstGap = 10;
    private const float HoursDepth = 84;
    private const float LoadDepth = 62;
    private const float Between = 22;
    private const float HoursShare = 0.6f;
    private ImmutableArray<HistoryEntry> Weeks => review.History;

    /// <summary>Hours by band against what was planned, and chronic load with its ramp in words.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (Weeks.IsEmpty)
            yield break;
        if (Weeks.Length == 1)
        {
            yield return new TextBlock(fonts, OneWeek(), Styles.Body, sheet.ContentWidth) { SpaceBefore = 12, Outline = "The weeks" };
            yield break;
        }

        float width = sheet.ContentWidth, hours = (width - Between) * HoursShare;
        yield return new SideBySide(
            new TrendChart(review, Hours(), fonts, hours, HoursDepth), new TrendChart(review, new LoadTopic(LoadTitle(), LoadCaption()), fonts, width - Between - hours, HoursDepth), hours + Between)
        {
            SpaceBefore = FirstGap,
            Outline = "The weeks",
        };
    }

    /// <summary>The rest of what can be followed over the weeks: the appendix.</summary>
    public IEnumerable<Block> Rest()
    {
        if (Weeks.Length < 2)
            yield break;
        yield return new SectionHead(fonts, $"The last {Shown.Tally(Weeks.Length, "week")}", sheet.ContentWidth) { SpaceBefore = 24, KeepWithNext = true, Outline = "The weeks, continued" };
        yield return Chart(Stress(), LoadDepth, 4, null);
        yield return Chart(Ramp(), LoadDepth, ChartGap, null);
        yield return Chart(Longest(), LoadDepth, ChartGap, null);
    }

    private string OneWeek() =>
        $"There is one week of rides so far, so there is no trend to draw: {Shown.Hours(review.Week.Hours)}, {Shown.Points(review.Week.Stress)} of training stress, "
        + $"chronic load {Shown.Number(review.Week.ChronicLoad, 1)} at the week’s end, longest ride {Shown.Length(review.Week.LongestRideSeconds)}.";

    private TrendChart Chart(TrendTopic topic, float depth, float gap, string? outline) =>
        new(review, topic, fonts, sheet.ContentWidth, depth) { SpaceBefore = gap, Outline = outline };

    private string Title(Trend topic, string otherwise) =>
        review.Findings.FirstOrDefault(finding => finding.Standing.Heads == topic && finding.Verdict != Verdict.NotJudged)?.Sentence ?? otherwise;

    private HoursTopic Hours()
    {
        var planned = Weeks.Any(week => week.PlannedHours > 0) ? "; stroke: planned" : "";
        var marks = Weeks.Any(week => week.Exception is not null)
            ? " " + string.Join(", ", Weeks.Select(week => week.Exception).OfType<ExceptionKind>().Distinct().Select(Letter)) + "."
            : "";
        var open = Weeks.Any(HoursTopic.HasUnbanded) ? "; open: neither power nor heart rate" : "";
        return new HoursTopic(HoursTitle(), $"By band{planned}{open}.{marks}");
    }

    private string HoursTitle() => review.History[^1].PlannedHours is { } planned
        ? $"{Shown.Number(review.Week.Hours, 1)} of {Shown.Hours(planned)} planned"
        : $"{Shown.Hours(review.Week.Hours)} this week";

    private static string Letter(ExceptionKind exception) => Formatting.Words.Of(exception) is var word ? $"{char.ToUpperInvariant(word[0])}{Shown.Joint}{word}" : "";

    private BarTopic Stress() => new(
        $"Training stress {Shown.Points(review.Week.Stress)} this week", $"Training stress a week, points. {Range(week => week.Stress, 0, "points")}", week => week.Stress, 0);

    private string LoadTitle()
    {
        var ramp = review.Week.RampPerWeek;
        var load = Shown.Number(review.Week.ChronicLoad);
        if (Shown.Signed(ramp) == Shown.Signed(0))
            return $"Chronic load stayed at {load}";
        return $"Chronic load {(ramp > 0 ? "rose" : "fell")} by {Shown.Points(Math.Abs(ramp), 1)} to {load}";
    }

    private string LoadCaption() =>
        $"Points a day{(Weeks.Any(week => week.SettlingIn) ? "; dotted: settling in" : "")}.";

    private BarTopic Ramp() => new(
        LoadTitle(), $"Ramp: the week’s change in chronic load, points. {Range(week => week.RampPerWeek, 1, "points")}",
        week => week.RampPerWeek, 1)
    { Ticks = 3 };

    private BarTopic Longest()
    {
        var asked = review.Week.LongRideAskedSeconds is { } seconds ? $", dashed line {Shown.Length(seconds)} asked" : "";
        return new BarTopic(
            Title(Trend.LongestRide, "The longest ride"), $"Longest ride of each week, h{asked}. {Range(week => week.LongestRideSeconds / 3600.0, 1, "h")}",
            week => week.LongestRideSeconds / 3600.0, 1)
        { Level = review.Week.LongRideAskedSeconds / 3600.0 };
    }

    private string Range(Func<HistoryEntry, double> value, int decimals, string unit)
    {
        HistoryEntry least = Weeks.MinBy(value)!, most = Weeks.MaxBy(value)!;
        var now = Shown.Quantity(value(Weeks[^1]), unit, decimals);
        return Shown.Number(value(least), decimals) == Shown.Number(value(most), decimals)
            ? $"This week {now}, as in every week shown."
            : $"From {Shown.Number(value(least), decimals)} (week of {Shown.ShortDate(least.StartsOn)}) to {Shown.Number(value(most), decimals)} (week of {Shown.ShortDate(most.StartsOn)}); this week {now}.";
    }
}
