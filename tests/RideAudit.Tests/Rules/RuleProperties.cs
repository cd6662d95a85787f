using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Rules;

public class RuleProperties
{
    private static readonly LocalDate Monday = Sample.Monday;

    internal static readonly Arbitrary<ImmutableArray<RideFigures>> Rides = Arb.From(
        from count in Gen.Choose(0, 30)
        from rides in Gen.ArrayOf(RideGen(), count)
        select rides.DistinctBy(r => r.File).ToImmutableArray());

    internal static readonly Arbitrary<PlanInForce> Plans = Arb.From(
        from hours in Gen.Choose(0, 20)
        from experience in Gen.Elements(Experience.New, Experience.Regular, Experience.Racing)
        from split in Gen.Elements(SplitBy.Time, SplitBy.Session)
        from kind in Gen.Choose(0, 6)
        from day in Gen.Choose(-10, 6)
        let exceptions = kind > 2 ? Array.Empty<PlanException>() : [new PlanException(Monday.PlusDays(day), Monday.PlusDays(day + 4), (ExceptionKind)kind)]
        select Sample.Plan(hours == 0 ? null : hours, experience, new TrainingPlan { SplitBy = split }, exceptions));

    [Fact]
    public void Every_week_gets_one_finding_a_rule_in_the_order_of_the_method() => Check(Prop.ForAll(Rides, Plans, (rides, plan) =>
    {
        var findings = RuleBook.Standard.Judge(Sample.Review(rides, plan));
        return findings.Select(f => f.Rule).SequenceEqual(RuleOrder.Ids) && findings.All(IsComplete);
    }));

    [Fact]
    public void Taking_a_ride_away_never_breaks_spacing() => Check(Prop.ForAll(Rides, Plans, (rides, plan) =>
    {
        var before = Sample.Judge("hard-day-spacing", Sample.Review(rides, plan)).Verdict;
        return before == Verdict.NotJudged || Enumerable.Range(0, rides.Length).All(i =>
            rides[i].Kind == RideKind.Unrated || Sample.Judge("hard-day-spacing", Sample.Review(rides.RemoveAt(i), plan)).Verdict <= before);
    }));

    [Fact]
    public void Shifting_every_ride_by_whole_weeks_shifts_the_review() => Check(Prop.ForAll(Rides, Gen.Choose(-60, 60).ToArbitrary(), (rides, weeks) =>
    {
        var plan = Sample.Plan();
        var here = RuleBook.Standard.Judge(Sample.Review(rides, plan));
        var there = RuleBook.Standard.Judge(Sample.Review(rides.Select(r => Shift(r, 7 * weeks)), plan, Monday.PlusDays(7 * weeks)));
        return here.Zip(there).All(p => p.First.Verdict == p.Second.Verdict
            && p.First.Occurrences.Select(o => o.Verdict).SequenceEqual(p.Second.Occurrences.Select(o => o.Verdict))
            && DatesOf(p.First).Select(d => d.PlusDays(7 * weeks)).SequenceEqual(DatesOf(p.Second)));
    }));

    [Fact]
    public void The_order_in_which_rides_are_given_changes_nothing() => Check(Prop.ForAll(Rides, Plans, (rides, plan) =>
    {
        var given = RuleBook.Standard.Judge(Sample.Review(rides, plan));
        var reversed = RuleBook.Standard.Judge(Sample.Review(rides.Reverse(), plan));
        return given.Zip(reversed).All(p => p.First.Verdict == p.Second.Verdict && p.First.Sentence == p.Second.Sentence);
    }));

    [Fact]
    public void An_estimated_threshold_breaks_nothing_that_rests_on_it() => Check(Prop.ForAll(Rides, Plans, (rides, plan) =>
    {
        string[] byTimeAlone = ["weekly-hours", "lighter-week"];
        var estimate = Sample.Threshold with { From = ThresholdSource.Estimate, PoweredRidesBefore = 20, DaysOfHistory = 80 };
        var estimated = rides.Select(r => r.Threshold is null ? r : r with { Threshold = estimate }).Where(r => r.Kind != RideKind.Unrated);
        return RuleBook.Standard.Judge(Sample.Review(estimated, plan)).All(f => f.Verdict != Verdict.Broken || byTimeAlone.Contains(f.Rule));
    }));

    [Fact]
    public void A_change_that_is_found_keeps_what_it_says_and_worsens_nothing() => Check(Prop.ForAll(Rides, Plans, (rides, plan) =>
    {
        var week = Sample.Review(rides, plan);
        var findings = RuleBook.Standard.Judge(week);
        if (ChangeSearch.Find(week, findings) is not { Changes.Length: > 0 } change || change.Changes.Any(c => c.Kind is not (ChangeKind.Move or ChangeKind.Swap)))
            return true;
        var moved = rides.Select(r => change.Changes.FirstOrDefault(c => c.Ride == r.File) is { } c ? ChangedRide.On(r, c.To) : r);
        var after = RuleBook.Standard.Judge(Sample.Review(moved, plan));
        return change.Keeps.All(id => after.Single(f => f.Rule == id).Verdict == Verdict.Kept)
            && findings.Zip(after).All(p => p.Second.Verdict != Verdict.Broken || p.First.Verdict == Verdict.Broken);
    }));

    /// <summary>Closed form of the exponential mean: the sum of a·(1−a)^(days since)·stress, a = 1 − e^(−1/N).</summary>
    [Fact]
    public void Loads_agree_with_the_closed_form() => Check(Prop.ForAll(Gen.ArrayOf(Gen.Choose(0, 400), 120).ToArbitrary(), stresses =>
    {
        var load = default(LoadState);
        foreach (var stress in stresses)
            load = load.After(stress);
        return Math.Abs(load.Acute - Closed(stresses, 7)) < 1e-9 && Math.Abs(load.Chronic - Closed(stresses, 42)) < 1e-9;
    }));

    private static double Closed(int[] stresses, double days)
    {
        var weight = 1 - Math.Exp(-1 / days);
        return stresses.Select((s, i) => weight * Math.Pow(1 - weight, stresses.Length - 1 - i) * s).Sum();
    }

    private static Gen<RideFigures> RideGen() =>
        from day in Gen.Choose(-70, 6)
        from recent in Gen.Choose(0, 1)
        from kind in Gen.Elements(Enum.GetValues<RideKind>())
        from minutes in Gen.Choose(0, 400)
        from hour in Gen.Choose(0, 23)
        from low in Gen.Choose(0, 100)
        select Sample.Ride(Monday.PlusDays(recent == 1 ? Math.Abs(day) % 7 : day), kind, minutes, hour, 0, kind == RideKind.Unrated ? null : low / 100.0);

    private static RideFigures Shift(RideFigures ride, int days) => ChangedRide.On(ride, ride.Date.PlusDays(days));

    private static IEnumerable<LocalDate> DatesOf(Finding finding) => finding.Occurrences.SelectMany(o => o.Dates);

    private static bool IsComplete(Finding finding) =>
        finding.Sentence.EndsWith('.') && !finding.Sentence.Contains("NaN", StringComparison.Ordinal) && !finding.Sentence.Contains('∞', StringComparison.Ordinal)
        && finding.Verdict == Verdict.NotJudged == finding.Reason is not null
        && finding.Occurrences.All(o => o.Numbers.All(n => n.Value is not { } value || double.IsFinite(value)));

    private static void Check(Property property) => FsCheck.Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), property);
}
