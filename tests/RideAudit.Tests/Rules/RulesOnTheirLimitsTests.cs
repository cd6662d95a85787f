using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>What the worked weeks seldom meet: values on a limit, numbers of a flag, words for one where there are usually several.</summary>
public sealed class RulesOnTheirLimitsTests
{
    private static readonly LocalDate Monday = Sample.Monday;

    [Fact]
    public void Minutes_close_to_threshold_are_those_of_both_days_and_told_in_minutes()
    {
        RideFigures Near(int day, int minutes) => Sample.Ride(Monday.PlusDays(day), RideKind.Threshold, 75) with { NearThreshold = Share(minutes) };
        var finding = Sample.Judge("hard-day-spacing", Sample.Review([Near(1, 30), Near(2, 20), Sample.Ride(Monday.PlusDays(5), RideKind.Long, 180, 9)], Sample.Plan()));

        Assert.Equal(Verdict.Broken, finding.Verdict);
        Assert.Equal([50.0], finding.Occurrences.SelectMany(o => o.Numbers).Where(n => n.Name == "near_threshold_min").Select(n => n.Value!.Value));
        Assert.Contains("50 min close to threshold", finding.Sentence.Plain(), StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_that_are_planned_by_the_weeks_before_are_called_usual()
    {
        var rider = Sample.Plan(null).Rider;
        var history = Enumerable.Range(1, 3).Select(w => new WeekHours(Monday.PlusDays(-7 * w), 8, false, null)).ToImmutableArray();
        var several = PlanInForce.For(rider, history);
        var one = PlanInForce.For(rider, history[..1]);
        RideFigures[] rides = [Sample.Ride(Monday.PlusDays(1), RideKind.Endurance, 240)];

        var (short3, short1) = (Sample.Judge("weekly-hours", Sample.Review(rides, several)), Sample.Judge("weekly-hours", Sample.Review(rides, one)));

        Assert.Equal("4.0 h ridden, 50 % of 8.0 h, the mean of three weeks before.", short3.Sentence.Plain());
        Assert.Equal("4.0 h ridden, 50 % of 8.0 h, the hours of the week before.", short1.Sentence.Plain());
        Assert.Equal(("Ride nearer the usual hours.", "4.0 h against a usual 8.0 h"), (short3.Advice?.Plain(), short3.Headline?.Plain()));
    }

    /// <summary>Half or one and a half times the hours planned is still no headline of its own.</summary>
    [Theory]
    [InlineData(239, true)]
    [InlineData(240, false)]
    [InlineData(720, false)]
    [InlineData(721, true)]
    public void Hours_far_off_the_plan_lead_the_review(int minutes, bool leads)
    {
        var finding = Sample.Judge("weekly-hours", Sample.Review([Sample.Ride(Monday.PlusDays(1), RideKind.Endurance, minutes)], Sample.Plan(8)));

        Assert.Equal((Verdict.Broken, leads), (finding.Verdict, finding.Standing.Rank == Standing.FirstOfWhatWasMissed));
    }

    [Fact]
    public void A_ride_that_adds_no_time_above_easy_adds_none_of_it()
    {
        var rides = Enumerable.Range(1, 4).Select(w => Sample.Ride(Monday.PlusDays(-7 * w), RideKind.Endurance, 300) with { Bands = new BandSeconds(17_000, 1_000, 0) });
        var finding = Sample.Judge("growth-is-endurance", Sample.Review([.. rides, Sample.Ride(Monday.PlusDays(1), RideKind.Long, 400) with { Bands = new BandSeconds(23_000, 1_000, 0) }], Sample.Plan()));

        Assert.Equal((Verdict.Kept, "1 h 40 min more than the mean of the weeks before, none of it above easy."), (finding.Verdict, finding.Sentence.Plain()));
    }

    [Fact]
    public void Growth_by_intensity_is_told_in_hours_and_as_a_share()
    {
        var rides = Enumerable.Range(1, 4).Select(w => Sample.Ride(Monday.PlusDays(-7 * w), RideKind.Endurance, 300) with { Bands = new BandSeconds(18_000, 0, 0) });
        var finding = Sample.Judge("growth-is-endurance", Sample.Review([.. rides, Sample.Ride(Monday.PlusDays(1), RideKind.Threshold, 390) with { Bands = new BandSeconds(18_900, 4_500, 0) }], Sample.Plan()));

        Assert.Equal((Verdict.Broken, "1 h 30 min more than the mean of the weeks before, 1 h 15 min of it above easy."), (finding.Verdict, finding.Sentence.Plain()));
        Assert.Equal([1.5, 1.25, 0.833333], finding.Occurrences.Single().Numbers.Select(n => Math.Round(n.Value!.Value, 6)));
    }

    [Fact]
    public void An_easy_ride_with_work_in_it_is_told_in_minutes_and_the_least_is_held_back()
    {
        RideFigures Windy(int day, RideKind kind, int length, int minutes) => Sample.Ride(Monday.PlusDays(day), kind, length) with { AtThresholdShare = Share(minutes) };
        var finding = Sample.Judge("easy-rides-easy", Sample.Review([Windy(1, RideKind.Endurance, 90, 14), Windy(5, RideKind.Long, 240, 45)], Sample.Plan()));

        Assert.Equal([14.0, 45.0], finding.Occurrences.SelectMany(o => o.Numbers).Where(n => n.Name == "around_threshold_min").Select(n => n.Value!.Value));
        Assert.Equal("Saturday’s long ride held 45 min of sustained work around threshold. One other easy ride went too hard as well.", finding.Sentence.Plain());
        Assert.Equal("The same rides held back on the climbs and into the wind: an intensity ratio of 0.76 at most, and no more than 6 min around threshold.", finding.WouldHaveKept?.Plain());
    }

    [Fact]
    public void A_plan_without_hard_days_is_said_to_have_none_and_what_is_high_is_named()
    {
        var none = Sample.WithLimits(("high_days_at_most", 0), ("threshold_days_on_top", 0));
        var one = Sample.WithLimits(("high_days_at_most", 1), ("threshold_days_on_top", 0));
        string Told(PlanInForce plan, params RideKind[] kinds)
        {
            var finding = Sample.Judge("hard-day-count", Sample.Review(kinds.Select((k, i) => Sample.Ride(Monday.PlusDays(2 * i), k, 60)), plan));
            return $"{finding.Sentence.Plain()} {finding.WouldHaveKept?.Plain()} {finding.Advice?.Plain()}";
        }

        Assert.Equal("One high day and one threshold day; the plan has no hard days. Two hard days fewer, one of them high, ridden easy. Keep all of the week easy.", Told(none, RideKind.High, RideKind.Threshold));
        Assert.Equal(
            "Two high days and two threshold days; the plan has at most one high day and one hard day in all. Three hard days fewer, one of them high, ridden easy. Keep to one hard day a week.",
            Told(one, RideKind.High, RideKind.High, RideKind.Threshold, RideKind.Threshold));
    }

    /// <summary>Each by the longest before it: 100 min, then the 130 that the first should have been at most.</summary>
    [Fact]
    public void Of_two_rides_that_jump_the_longer_is_named_and_both_are_stepped()
    {
        RideFigures[] rides = [.. Enumerable.Range(1, 6).Select(w => Sample.Ride(Monday.PlusDays(-7 * w), RideKind.Endurance, 100)), Sample.Ride(Monday.PlusDays(1), RideKind.Endurance, 140), Sample.Ride(Monday.PlusDays(4), RideKind.Endurance, 190)];
        var (two, one) = (Sample.Judge("longest-ride-jump", Sample.Review(rides, Sample.Plan())), Sample.Judge("longest-ride-jump", Sample.Review(rides[..^1], Sample.Plan())));

        Assert.StartsWith("Friday’s ride of 3 h 10 min was 1.36 times the longest of the 30 days before (2 h 20 min).", two.Sentence.Plain(), StringComparison.Ordinal);
        Assert.Equal(("Rides of at most 2 h 10 min and 2 h 49 min, one after the other.", "A ride of at most 2 h 10 min."), (two.WouldHaveKept?.Plain(), one.WouldHaveKept?.Plain()));
    }

    [Fact]
    public void The_longest_ride_that_may_be_lengthened_is_with_its_hour_where_the_day_has_two()
    {
        string? Kept(params RideFigures[] rides) => Sample.Judge("long-ride", Sample.Review(rides, Sample.Plan(8))).WouldHaveKept?.Plain();
        RideFigures On(int day, int minutes, int hour = 18, RideKind kind = RideKind.Endurance) => Sample.Ride(Monday.PlusDays(day), kind, minutes, hour);

        Assert.Equal("30 min more on Friday, all of it easy.", Kept(On(1, 110), On(4, 120)));
        Assert.Equal("30 min more on Friday’s 18:00 ride, all of it easy.", Kept(On(1, 110), On(4, 20, 7), On(4, 120)));
        Assert.Equal("50 min more on Tuesday, all of it easy.", Kept(On(1, 100), On(4, 120, kind: RideKind.High)));
        Assert.Equal("One easy ride of 2 h 30 min.", Kept(On(1, 99), On(4, 60)));
        Assert.Equal("One easy ride of 2 h 30 min in place of other riding.", Kept([.. Enumerable.Range(0, 7).Select(d => On(d, 70))]));
    }

    [Fact]
    public void The_threshold_in_force_is_the_last_entry_by_the_weeks_end_and_the_best_effort_the_first_of_its_power()
    {
        string Figure(params (int From, double Watts)[] entries)
        {
            var plan = Sample.Plan();
            plan = plan with { Rider = plan.Rider with { Thresholds = [.. entries.Select(e => new ThresholdEntry(Monday.PlusDays(e.From), new Watts(e.Watts), null))] } };
            RideFigures[] rides = [Hard(1, 290), Hard(3, 290), Hard(-6, 270)];
            return Sample.Judge("threshold-fresh", Sample.Review(rides, plan)).Sentence.Plain();
        }

        const string TooLow = "A best 20 min of 290 W on 5 May puts threshold power near 276 W, 10 % above the 250 W in force: every share in this review is then too high.";
        const string Fresh = "The best 20 min of 42 days, 290 W on 5 May, do not say that the 300 W in force are too low.";
        Assert.Equal([TooLow, Fresh, TooLow, Fresh], [Figure((-300, 250)), Figure((-300, 250), (6, 300)), Figure((-300, 250), (7, 300)), Figure((7, 300), (30, 310))]);
    }

    private static RideFigures Hard(int day, double watts) =>
        Sample.Ride(Monday.PlusDays(day), RideKind.High, 60) with { Bests = [new BestPower(1200, watts, 0)] };

    private static SustainedTime Share(int minutes) => new(95, 60 * minutes, []);
}
