using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>A coach may set a rule aside, with a reason and an end.</summary>
public sealed class SetAsideTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void A_rule_set_aside_is_not_judged_and_says_until_when_and_why()
    {
        var aside = new SetAsideRule("long-ride", Monday.PlusDays(20), "the knee bears one hour");
        var finding = Judge("long-ride", aside);

        Assert.Equal((Verdict.NotJudged, aside), (finding.Verdict, finding.SetAside));
        Assert.Equal("Set aside until 24 May: the knee bears one hour.", finding.Sentence.Plain());
        Assert.Null(finding.WouldHaveKept);
        Assert.Null(finding.Headline);
        Assert.Empty(finding.Occurrences);
    }

    [Theory]
    [InlineData(6, true)]
    [InlineData(5, false)]
    public void It_comes_back_with_the_first_week_that_ends_after_its_last_day(int until, bool isAside)
    {
        var finding = Judge("long-ride", new SetAsideRule("long-ride", Monday.PlusDays(until), "a sore knee"));

        Assert.Equal(isAside ? Verdict.NotJudged : Verdict.Broken, finding.Verdict);
        Assert.Equal(isAside, finding.SetAside is not null);
    }

    [Fact]
    public void The_other_rules_are_judged_as_ever()
    {
        var plan = With(Sample.Plan(), new SetAsideRule("hard-day-spacing", Monday.PlusDays(20), "a block of racing"));
        var week = Sample.Review([Hard(1), Hard(2)], plan);

        Assert.Equal(["hard-day-spacing"], RuleBook.Standard.Judge(week).Where(f => f.SetAside is not null).Select(f => f.Rule));
        Assert.Equal(Verdict.Broken, Sample.Judge("long-ride", week).Verdict);
    }

    [Fact]
    public void Three_hard_days_ask_for_no_long_ride_that_is_set_aside()
    {
        var plan = With(Sample.Plan(), new SetAsideRule("long-ride", Monday.PlusDays(20), "the knee bears one hour"));

        Assert.Equal("the long-ride rule is set aside", Sample.Judge("long-ride-first", Sample.Review([Hard(0), Hard(2), Hard(4)], plan)).Reason);
    }

    private static Finding Judge(string rule, SetAsideRule aside) => Sample.Judge(rule, Sample.Review([Hard(1)], With(Sample.Plan(), aside)));

    private static PlanInForce With(PlanInForce plan, SetAsideRule aside) => plan with { Rider = plan.Rider with { SetAside = [aside] } };

    private static RideFigures Hard(int day) => Sample.Ride(Monday.PlusDays(day), RideKind.High, 60);
}
