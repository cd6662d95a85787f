using System.Text.RegularExpressions;
using RideAudit.Plan;
using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Tests.Words;

public sealed class RuleWordsTests
{
    [Theory]
    [InlineData("hours_between", 22.9, "22.9 h between")]
    [InlineData("low_share", 0.73, "73 % low")]
    [InlineData("low_hours", 2.79, "2.79 h low")]
    [InlineData("longest_ride_h", 1, "longest ride 1 h")]
    [InlineData("high_days", 2, "2 days high")]
    [InlineData("rest_or_recovery_days", 1, "1 day of rest or recovery")]
    [InlineData("hard_days", 3, "3 hard days")]
    [InlineData("monotony", 1.13, "monotony 1.13")]
    [InlineData("share_of_plan", 0.595, "59.5 % of plan")]
    [InlineData("threshold_shown_w", 262.5, "262.5 W shown")]
    [InlineData("a_number_to_come", 1.5, "a number to come 1.5")]
    public void A_number_of_a_finding_reads_in_words(string name, double value, string text) =>
        Assert.Equal(text, Plain(RuleWords.Numbers([new NamedNumber(name, value)])));

    [Theory]
    [InlineData("hours_watch_margin", 0.15, "hours watch margin 15 %")]
    [InlineData("split_tolerance", 0.07, "split tolerance 7 %")]
    [InlineData("growth_above_low_share", 0.3333, "growth above low share 33.3 %")]
    [InlineData("stress_unknown_share_at_most", 0.1, "stress unknown share at most 10 %")]
    [InlineData("high_share_percent", 91, "high share 91 %")]
    [InlineData("long_ride_h", 2.5, "long ride 2.5 h")]
    [InlineData("jump_least_min", 90, "jump least 90 min")]
    [InlineData("heavy_pair_stress", 100, "heavy pair stress 100 points")]
    [InlineData("monotony_watch", 1.5, "monotony watch 1.5")]
    [InlineData("jump_days", 30, "jump 30 days")]
    [InlineData("growth_weeks", 1, "growth 1 week")]
    [InlineData("high_days_at_most", 2, "high days at most 2")]
    [InlineData("long_ride_first_hard_days", 3, "long ride first 3 hard days")]
    [InlineData("split_sessions_at_least", 5, "split sessions at least 5 rides")]
    public void A_limit_reads_with_the_unit_that_the_catalogue_has(string name, double value, string text) =>
        Assert.Equal(text, Plain(RuleWords.Limits([new NamedNumber(name, value)])));

    public static IEnumerable<object[]> Limits => LimitCatalogue.All.Select(limit => new object[] { limit.Name });

    [Theory]
    [MemberData(nameof(Limits))]
    public void Every_limit_has_its_value_and_a_fraction_is_in_per_cent(string name)
    {
        LimitDefinition limit = LimitCatalogue.Find(name)!;
        string text = Plain(RuleWords.Limits([new NamedNumber(name, limit.Least)]));
        double shown = limit.Unit == "share" ? limit.Least * 100 : limit.Least;

        Assert.Contains($" {shown.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)}", text, StringComparison.Ordinal);
        Assert.Equal(limit.Unit is "share" or "%", text.EndsWith(" %", StringComparison.Ordinal));
    }

    [Fact]
    public void A_limit_without_a_value_is_left_out() =>
        Assert.Equal("split tolerance 7 %", Plain(RuleWords.Limits([new("intended_easy_session_share", null), new("split_tolerance", 0.07)])));

    [Fact]
    public void A_number_without_a_value_is_a_dash() => Assert.Equal("hours between –", RuleWords.Numbers([new("hours_between", null)]));

    [Fact]
    public void Every_number_that_a_rule_names_has_a_phrase()
    {
        string rules = Repository.Path("src", "RideAudit", "Rules");
        string[] names = [.. Directory.EnumerateFiles(rules, "*.cs").SelectMany(file => Regex.Matches(File.ReadAllText(file), "(?:Numbered\\.Of|new)\\((?:byTime \\? )?\"([a-z_]+)\",?").Select(match => match.Groups[1].Value)).Distinct()];

        Assert.True(names.Length > 30, $"only {names.Length} names were found");
        Assert.All(names, name => Assert.True(NumberWords.Knows(name), name));
    }

    [Fact]
    public void A_rules_id_reads_as_words() => Assert.Equal("Hard day spacing", RuleWords.Name("hard-day-spacing"));

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
