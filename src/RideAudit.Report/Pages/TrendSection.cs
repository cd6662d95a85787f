using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The weeks before and the reviewed one.</summary>
/// <param name="review">The review.</param>
/// <param name="fonts">Fonts.</param>
/// <param name="sheet">The paper.</param>
internal sealed class TrendSection(ReviewDocument review, FontSet fonts, Sheet sheet)
{
    private const float ChartGap = 11;
    private ImmutableArray<HistoryEntry> Weeks => review.History;

    /// <summary>The section's blocks.</summary>
    public IEnumerable<Block> Blocks()
    {
        float width = sheet.ContentWidth;
        string head = Weeks.Length == 1 ? "The first week" : $"The last {Shown.Tally(Weeks.Length, "week")}";
        yield return new SectionHead(fonts, Weeks.IsEmpty ? "The weeks" : head, width) { SpaceBefore = 24, KeepWithNext = true, Outline = "The trend" };
        if (Weeks.IsEmpty)
        {
            yield return new TextBlock(fonts, "No week to show yet.", Styles.Body, width);
            yield break;
        }

        if (Weeks.Length == 1)
        {
            yield return new TextBlock(fonts, OneWeek(), Styles.Body, width);
            yield break;
        }

        float depth = (sheet.FlowHeight - 262) / 5.6f;
        yield return Chart(Hours(), depth * 1.3f, 4);
        yield return Chart(Stress(), depth, ChartGap);
        yield return Chart(new LoadTopic(Title(Trend.Load, "Chronic load"), LoadCaption()), depth, ChartGap);
        yield return Chart(Ramp(), depth * 0.9f, ChartGap);
        yield return Chart(Longest(), depth, ChartGap);
    }

    private string OneWeek() =>
        $"There is one week of rides so far, so there is no trend to draw: {Shown.Hours(review.Week.Hours)}, {Shown.Points(review.Week.Stress)} of training stress, "
        + $"chronic load {Shown.Number(review.Week.ChronicLoad, 1)} at the week’s end, longest ride {Shown.Length(review.Week.LongestRideSeconds)}.";

    private TrendChart Chart(TrendTopic topic, float depth, float gap) => new(review, topic, fonts, sheet.ContentWidth, depth) { SpaceBefore = gap };

    private string Title(Trend topic, string otherwise) =>
        review.Findings.FirstOrDefault(finding => finding.Standing.Heads == topic && finding.Verdict != Verdict.NotJudged)?.Sentence ?? otherwise;

    private HoursTopic Hours()
    {
        string planned = review.Rider.PlannedHours is { } hours ? $", dashed line {Shown.Hours(hours)} planned" : "";
        string marks = Weeks.Any(week => week.Exception is not null) ? " L lighter week, E event, A away." : "";
        return new HoursTopic(Title(Trend.Hours, "Hours a week"), $"Hours a week by band: low light, middle hatched, high dark{planned}. {Range(week => week.Hours, 1, "h")}{marks}");
    }

    private BarTopic Stress() => new(
        $"Training stress {Shown.Points(review.Week.Stress)} this week", $"Training stress a week, points. {Range(week => week.Stress, 0, "points")}", week => week.Stress, 0);

    private string LoadCaption() =>
        $"Chronic load at each week’s end, points a day, a mean that forgets over 42\u00A0days; dotted while it settles in. {Range(week => week.ChronicLoad, 1, "points")}";

    private BarTopic Ramp() => new(
        $"Chronic load changed by {Shown.Signed(review.Week.RampPerWeek)}{Shown.Joint}points this week", $"Ramp: the week’s change in chronic load, points. {Range(week => week.RampPerWeek, 1, "points")}",
        week => week.RampPerWeek, 1)
    { Ticks = 3 };

    private BarTopic Longest()
    {
        string asked = review.Week.LongRideAskedSeconds is { } seconds ? $", dashed line {Shown.Length(seconds)} asked" : "";
        return new BarTopic(
            Title(Trend.LongestRide, "The longest ride"), $"Longest ride of each week, h{asked}. {Range(week => week.LongestRideSeconds / 3600.0, 1, "h")}",
            week => week.LongestRideSeconds / 3600.0, 1)
        { Level = review.Week.LongRideAskedSeconds / 3600.0 };
    }

    private string Range(Func<HistoryEntry, double> value, int decimals, string unit)
    {
        HistoryEntry least = Weeks.MinBy(value)!, most = Weeks.MaxBy(value)!;
        string now = Shown.Quantity(value(Weeks[^1]), unit, decimals);
        return Weeks.Length == 1
            ? $"This week {now}."
            : $"From {Shown.Number(value(least), decimals)} (week of {Shown.ShortDate(least.StartsOn)}) to {Shown.Number(value(most), decimals)} (week of {Shown.ShortDate(most.StartsOn)}); this week {now}.";
    }
}
