using RideAudit.Rules;

namespace RideAudit.Tests.Coach;

/// <summary>Weeks drawn as the trade draws them keep every rule, whatever the noise.</summary>
public sealed class TradeWeekTests
{
    private const int Seeds = 15;
    private const int OtherSeeds = 10;

    public static TheoryData<string> Names => [.. TradeWeeks.All.Select(w => w.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_week_as_the_trade_draws_it_breaks_no_rule_and_has_one_worth_a_look_at_most(string name)
    {
        var week = TradeWeeks.All.Single(w => w.Name == name);
        Assert.All(Enumerable.Range(1, Seeds + OtherSeeds), seed =>
        {
            var findings = RiddenWeeks.Judge(week, week, seed);
            Assert.True(
                findings.All(f => f.Verdict != Verdict.Broken) && findings.Count(f => f.Verdict == Verdict.Watch) <= 1,
                $"seed {seed}\n{RiddenWeeks.Text(findings)}");
        });
    }
}
