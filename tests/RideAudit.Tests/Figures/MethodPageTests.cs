using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rides;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Figures;

/// <summary>docs/method.md and the code name the same figures and the same numbers.</summary>
public sealed partial class MethodPageTests
{
    /// <summary>What computes a figure without being a static class of RideAudit.Figures.</summary>
    private static readonly Type[] Others =
    [
        typeof(TrailingPower), typeof(PowerCurve), typeof(ThresholdBook), typeof(ThresholdOpinion), typeof(CriticalPower),
        typeof(GridBuilder), typeof(RideJoiner), typeof(DuplicateFinder),
        typeof(DayFacts), typeof(WeekFacts), typeof(LoadState), typeof(BandSeconds), typeof(IntensityStructure),
    ];

    /// <summary>What holds or finds values that a figure is made of.</summary>
    private static readonly Type[] Helpers = [typeof(Channel), typeof(LastWord), typeof(TrailingStretches), typeof(SteadyEasy), typeof(AllCores)];

    private static readonly string Page = File.ReadAllText(Repository.Path("docs", "method.md"));

    [Fact]
    public void Every_figure_of_the_code_has_a_heading_and_every_heading_a_figure()
    {
        var inCode = typeof(FigureBuilder).Assembly.GetTypes()
            .Where(t => t.Namespace == typeof(FigureBuilder).Namespace && t is { IsNested: false, IsAbstract: true, IsSealed: true } && !Helpers.Contains(t))
            .Concat(Others)
            .Select(t => t.Name);
        Assert.Equal(inCode.Order(StringComparer.Ordinal), Headings().Select(h => h.Groups["type"].Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_figure_says_where_it_comes_from()
    {
        string[] words = ["Source:", "Common practice", "Arithmetic", "found)", "side by side"];
        foreach (Match heading in Headings())
        {
            var start = heading.Index + heading.Length;
            var end = Page.IndexOf("\n##", start, StringComparison.Ordinal) is var at and > 0 ? at : Page.Length;
            var section = Page[start..end];
            Assert.True(words.Any(w => section.Contains(w, StringComparison.OrdinalIgnoreCase)), heading.Value);
        }
    }

    [Fact]
    public void Every_source_says_how_far_it_was_checked()
    {
        foreach (var line in Page.Split('\n').Where(l => l.StartsWith("Source: ", StringComparison.Ordinal)))
            Assert.True(Status().IsMatch(line), line);
    }

    [Fact]
    public void The_numbers_of_the_page_are_the_code_s()
    {
        var rows = Number().Matches(Page);
        Assert.True(rows.Count >= 13);
        foreach (Match row in rows)
        {
            var type = typeof(FigureBuilder).Assembly.GetTypes().Single(t => t.Name == row.Groups["type"].Value);
            var value = type.GetField(row.Groups["field"].Value, BindingFlags.Public | BindingFlags.Static)!.GetRawConstantValue();
            Assert.Equal(double.Parse(row.Groups["value"].Value, CultureInfo.InvariantCulture), Convert.ToDouble(value, CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void The_kinds_are_told_by_the_limits_that_the_page_prints()
    {
        var limits = new Limits();
        ImmutableArray<string> printed =
        [
            $"A ride of less than {limits.KindLeastMinutes} minutes (`kind_least_min`)",
            $"at most {limits.JoinGapMinutes} minutes (`join_gap_min`)",
            $"sustained time at {limits.HighSharePercent} % ≥ {limits.HighMinutes} min",
            $"intensity ratio ≥ {limits.BoutsRatio:0.00} and at least {limits.BoutsAtLeast} bouts of ≥ {limits.BoutsMinutes} min in all",
            $"sustained time at {limits.ThresholdSharePercent} % ≥ {limits.ThresholdMinutes} min and ≥ {limits.ThresholdLeastShare * 100:0} % share",
            $"intensity ratio ≥ {limits.ThresholdRatio:0.00} over at least {limits.ThresholdRatioMinutes} min",
            $"at least {limits.LongRideLengthShare * 100:0} % of the plan's long ride, and ≥ {limits.LongRideLowShare * 100:0} % low",
            $"at least {limits.LongEnoughLowShare * 100:0} % of its time is low",
            $"at most {limits.RecoveryMinutes} min, and normalised power ≤ {limits.RecoveryPowerPercent} %",
            $"at least {limits.BoutLeastSeconds} s whose trailing 5 s mean is at or above {limits.BoutSharePercent} %",
            $"at {limits.ThresholdSharePercent}, {limits.NearThresholdSharePercent} and {limits.HighSharePercent} %",
            $"{limits.HeartRateHighMinutes} min at ≥ {limits.HeartRateUpperCutPercent} % of threshold heart rate",
            $"{limits.HeartRateThresholdMinutes} min at ≥ {limits.HeartRateThresholdPercent} %",
            $"recovery up to {limits.RecoveryMinutes} min at a mean of ≤ {limits.RecoveryHeartRatePercent} %",
            $"cuts at {limits.HeartRateLowerCutPercent} and {limits.HeartRateUpperCutPercent} % of threshold heart rate",
            $"{limits.RatingHigh} and more high, {limits.RatingThreshold} and more threshold, {limits.RatingRecovery} and less over at most {limits.RecoveryMinutes} min recovery",
            $"an easy ride rated {limits.RatingHigh} or more, or a high one rated {limits.RatingEasy} or less",
            $"{limits.SecondHardRideHours} h or more after the end of the one before",
            $"at most {limits.ShortDayMinutes} min in all and at least {limits.ShortDayLowShare * 100:0} % low",
            $"other activity of {limits.OtherActivityMinutes} min",
            $"at or above {new TrainingPlan().LowerBandCutPercent} %",
            $"at or above {new TrainingPlan().UpperBandCutPercent} %",
        ];
        Assert.All(printed, sentence => Assert.Contains(sentence, Page, StringComparison.Ordinal));
    }

    private static MatchCollection Headings() => Heading().Matches(Page);

    [GeneratedRegex(@"^### .*\(`(?<type>\w+)`\)\r?$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^\| `(?<type>\w+)\.(?<field>\w+)` \| (?<value>[\d.]+) \|\r?$", RegexOptions.Multiline)]
    private static partial Regex Number();

    [GeneratedRegex("found|from memory|common practice|derived", RegexOptions.IgnoreCase)]
    private static partial Regex Status();
}
