using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Tests.Words;

public sealed class SayTests
{
    [Theory]
    [InlineData(3600, "1 h 00")]
    [InlineData(3540, "59 min")]
    [InlineData(3599, "1 h 00")]
    [InlineData(0, "0 min")]
    [InlineData(36_300, "10 h 05")]
    public void A_length_of_time_reads_as_a_clock(double seconds, string text) => Assert.Equal(text, Say.Clock(seconds).Replace('\u00A0', ' '));

    [Theory]
    [InlineData(-1.72, 1, "−1.7")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(2.5, 0, "3")]
    [InlineData(0.125, 2, "0.13")]
    public void A_number_has_a_true_minus_and_no_minus_nought(double value, int decimals, string text) => Assert.Equal(text, Say.Number(value, decimals));

    [Theory]
    [InlineData(2.1, "+2.1")]
    [InlineData(0.04, "0.0")]
    [InlineData(-3.0, "−3.0")]
    public void A_change_has_its_sign(double value, string text) => Assert.Equal(text, Say.Change(value));

    [Theory]
    [InlineData("hours_between", 22.9, "22.9 h between")]
    [InlineData("low_share", 0.73, "low share 73 %")]
    [InlineData("long_ride_h", 2.5, "long ride 2.5 h")]
    [InlineData("longest_ride_seconds", 9000, "longest ride 2 h 30")]
    [InlineData("high_days", 2, "high 2 days")]
    [InlineData("monotony", 1.13, "monotony 1.13")]
    [InlineData("hours_watch_margin", 0.15, "hours watch margin 15 %")]
    [InlineData("share_of_plan", 0.595, "share of plan 59.5 %")]
    [InlineData("days_between", 1, "1 day between")]
    public void A_named_number_reads_in_words(string name, double value, string text) =>
        Assert.Equal(text, RuleWords.Number(new NamedNumber(name, value)).Replace('\u00A0', ' '));

    [Fact]
    public void A_missing_number_is_a_dash_and_never_a_nought()
    {
        Assert.Equal("–", Say.Number(null));
        Assert.Equal("hours between –", RuleWords.Number(new NamedNumber("hours_between", null)));
    }

    [Theory]
    [InlineData("2026-W24", "24")]
    [InlineData("2026-W05", "5")]
    [InlineData(null, null)]
    public void The_iso_number_is_read_from_the_week(string? week, string? number) => Assert.Equal(number, Say.IsoNumber(week));

    [Fact]
    public void A_rules_id_reads_as_words() => Assert.Equal("Hard day spacing", RuleWords.Name("hard-day-spacing"));
}
