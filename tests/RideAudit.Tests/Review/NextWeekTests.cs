using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Tests.Support;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Review;

public class NextWeekTests
{
    private static readonly LocalDate Next = new(2026, 6, 22);

    public static TheoryData<double, Experience> Riders()
    {
        var data = new TheoryData<double, Experience>();
        foreach (var hours in new[] { 3.0, 4.5, 6.5, 8, 10, 14, 17 })
            foreach (var experience in Enum.GetValues<Experience>())
                data.Add(hours, experience);
        return data;
    }

    [Theory]
    [MemberData(nameof(Riders))]
    public void No_rule_is_broken_by_the_layout_of_a_rider_of_any_volume_and_experience(double hours, Experience experience)
    {
        var document = LayOut(RiderOf(hours, experience), SteadyWeeks(hours, 8));
        Assert.DoesNotContain(document.Findings, f => f.Verdict == Verdict.Broken);
        Assert.Equal(7, document.Days.Length);
        Assert.InRange(document.Hours, hours * 0.85, hours * 1.15);
    }

    [Theory]
    [MemberData(nameof(Riders))]
    public void Hard_days_never_lie_next_to_each_other_nor_exceed_the_plan(double hours, Experience experience)
    {
        var rider = RiderOf(hours, experience);
        var document = LayOut(rider, SteadyWeeks(hours, 8));
        var hard = document.Days.Select((d, i) => (d.Kind, i)).Where(d => d.Kind is DayKind.High or DayKind.Threshold).Select(d => d.i).ToList();
        Assert.All(hard.Zip(hard.Skip(1)), pair => Assert.True(pair.Second - pair.First > 1));
        Assert.True(hard.Count <= PlanInForce.For(rider, []).Limits.HighDaysAtMost);
        Assert.Contains(document.Days, d => d.Kind == DayKind.Long);
    }

    [Fact]
    public void Only_the_plans_days_are_ridden_on()
    {
        var rider = RiderOf(6, Experience.Regular);
        rider = rider with { Plan = rider.Plan with { Days = [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Sunday] } };
        var ridden = LayOut(rider, SteadyWeeks(6, 8)).Days.Where(d => d.Minutes > 0).Select(d => d.Date.DayOfWeek);
        Assert.All(ridden, d => Assert.Contains(d, rider.Plan.Days));
    }

    [Fact]
    public void The_long_ride_keeps_to_the_riders_habit_of_weekday()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8, longDay: 3));
        Assert.Equal(IsoDayOfWeek.Thursday, document.Days.Single(d => d.Kind == DayKind.Long).Date.DayOfWeek);
    }

    [Fact]
    public void A_long_ride_grows_by_no_more_than_the_jump_rule_allows()
    {
        var document = LayOut(RiderOf(5, Experience.Regular), SteadyWeeks(5, 8, longMinutes: 90));
        var minutes = document.Days.Single(d => d.Kind == DayKind.Long).Minutes;
        Assert.InRange(minutes, 90, 117);
        Assert.Contains(document.Notes, n => n.Plain().Contains("not yet the 2 h asked", StringComparison.Ordinal));
    }

    [Fact]
    public void The_day_after_a_hard_Sunday_is_not_hard()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8, hardSunday: true));
        Assert.DoesNotContain(document.Days[0].Kind, new[] { DayKind.High, DayKind.Threshold });
    }

    [Fact]
    public void Weeks_without_a_lighter_one_ask_for_one_and_say_so()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8, lighterEvery: 0));
        Assert.Equal(ExceptionKind.Lighter, document.Exception);
        Assert.InRange(document.Hours, 6.5 * 0.6 * 0.85, 6.5 * 0.6 * 1.15);
        Assert.Contains(document.Notes, n => n.Plain().Contains("[[exception]]", StringComparison.Ordinal));
        Assert.DoesNotContain(document.Findings, f => f.Verdict == Verdict.Broken);
    }

    [Fact]
    public void An_event_keeps_its_day_and_two_days_of_rest_after()
    {
        var rider = RiderOf(6.5, Experience.Regular) with { Exceptions = [new PlanException(Next.PlusDays(3), Next.PlusDays(3), ExceptionKind.Event)] };
        var days = LayOut(rider, SteadyWeeks(6.5, 8)).Days;
        Assert.Equal("event", days[3].KindInWords);
        Assert.Equal(["rest", "rest"], days[4..6].Select(d => d.KindInWords));
        Assert.DoesNotContain(days, d => d.Kind is DayKind.High or DayKind.Threshold or DayKind.Long);
    }

    [Fact]
    public void Without_planned_hours_there_is_no_layout_and_the_reason_is_given()
    {
        var rider = RiderOf(6.5, Experience.Regular);
        rider = rider with { Plan = rider.Plan with { WeeklyHours = null } };
        var document = LayOut(rider, SteadyWeeks(6.5, 1));
        Assert.Empty(document.Days);
        Assert.Contains("plans no hours", document.Notes.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Watts_follow_the_threshold_power_and_are_left_out_without_one()
    {
        var rider = RiderOf(6.5, Experience.Regular);
        var weeks = SteadyWeeks(6.5, 8);
        var high = LayOut(rider, weeks, 250).Days.First(d => d.Kind == DayKind.High).Sentence.Plain();
        Assert.Contains("(250 to 265 W)", high, StringComparison.Ordinal);
        Assert.DoesNotContain(" W)", string.Concat(LayOut(rider, weeks, null).Days.Select(d => d.Sentence.Plain())), StringComparison.Ordinal);
    }

    // By hand: 60 min at 0.62 of threshold power are 0.62² × 100 = 38.44 points; 45 min at 0.52 are 0.75 × 0.52² × 100 = 20.28.
    [Fact]
    public void Expected_stress_is_that_of_the_intended_intensity()
    {
        Assert.Equal(38.44, PlannedRides.StressOf(new PlannedDay(DayKind.Endurance, 60)), 2);
        Assert.Equal(20.28, PlannedRides.StressOf(new PlannedDay(DayKind.Recovery, 45)), 2);
        Assert.Equal(0, PlannedRides.StressOf(PlannedDay.Rest));
    }

    // By hand: eight weeks of 6.2 h, so at most 1.3 × 6.2 = 8.06 h, and no ride beyond 1.3 × the longest of 150 min = 195 min.
    [Fact]
    public void A_plan_far_above_the_weeks_ridden_is_approached_by_one_step_and_says_so()
    {
        var document = LayOut(RiderOf(16, Experience.Racing), EvenWeeks(8, 60, 62, 0, 50, 0, 150, 50));
        Assert.InRange(document.Hours, 6.2, 8.06);
        Assert.All(document.Days, d => Assert.InRange(d.Minutes, 0, 195));
        Assert.Contains(document.Notes, n => n.Plain().StartsWith("The plan asks for 16.0 h. The last four ordinary weeks had on average 6.2 h, so this one aims at 8.1 h", StringComparison.Ordinal));
        Assert.DoesNotContain(document.Findings, f => f.Rule is "weekly-growth" or "longest-ride-jump" && f.Verdict != Verdict.Kept);
    }

    [Fact]
    public void Hours_never_exceed_the_plan_however_much_was_ridden()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(12, 8));
        Assert.InRange(document.Hours, 5.5, 6.6);
        Assert.DoesNotContain(document.Notes, n => n.Plain().StartsWith("The plan asks for", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(5.0)]
    [InlineData(6.0)]
    [InlineData(7.5)]
    public void A_racing_rider_gets_the_second_hard_day_and_the_hours_or_the_reason(double before)
    {
        var document = LayOut(RiderOf(7.5, Experience.Racing), SteadyWeeks(before, 8));
        var hard = document.Days.Count(d => d.Kind is DayKind.High or DayKind.Threshold);
        Assert.True(hard == 2 || document.Notes.Any(n => n.Plain().Contains("Another would not keep", StringComparison.Ordinal)), string.Join('\n', document.Notes));
        Assert.True(document.Hours >= 0.95 * 7.5 || document.Notes.Any(n => n.Plain().Contains("7.5 h", StringComparison.Ordinal)), string.Join('\n', document.Notes));
        if (before >= 7)
            Assert.Equal(2, hard);
    }

    [Theory]
    [InlineData(15, 4)]
    [InlineData(20, 5)]
    [InlineData(25, 6)]
    [InlineData(60, 6)]
    public void A_session_holds_at_most_one_repeat_more_than_the_last_ones(int minutesRidden, int repeatsAtMost)
    {
        var past = SteadyWeeks(14, 8, workMinutes: minutesRidden);
        foreach (var hours in new[] { 6.5, 10.0, 14.0 })
            Assert.All(LayOut(RiderOf(hours, Experience.Racing), past).Days.Where(d => d.Kind == DayKind.High), d =>
                Assert.InRange(int.Parse(d.Sentence.Plain().Split(" × 5 min")[0].Split("; ")[1], null), 3, repeatsAtMost));
    }

    [Fact]
    public void A_rider_of_Wednesdays_is_not_told_that_Monday_is_free()
    {
        var rider = RiderOf(4, Experience.Regular);
        rider = rider with { Plan = rider.Plan with { Days = [IsoDayOfWeek.Wednesday] } };
        var notes = LayOut(rider, SteadyWeeks(4, 8, hardSunday: true)).Notes;
        Assert.DoesNotContain(notes, n => n.Contains("is free after", StringComparison.Ordinal));
        Assert.Contains(notes, n => n.Contains("leave no room for more", StringComparison.Ordinal));
    }

    [Fact]
    public void A_rider_of_weekends_gets_one_hard_day()
    {
        var rider = RiderOf(4, Experience.Regular);
        rider = rider with { Plan = rider.Plan with { Days = [IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday] } };
        var document = LayOut(rider, EvenWeeks(8, 0, 0, 0, 0, 0, 120, 105));
        Assert.Single(document.Days, d => d.Kind is DayKind.High or DayKind.Threshold);
        Assert.InRange(document.Hours, 3.4, 4.1);
    }

    [Fact]
    public void Easy_riding_is_a_range_well_within_the_low_band()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8));
        Assert.Contains("Easy throughout, at 55 to 75 % of threshold power (138 to 188 W)", document.Days.First(d => d.Kind == DayKind.Long).Sentence.Plain(), StringComparison.Ordinal);
    }

    [Fact]
    public void Watts_from_an_estimate_say_that_they_are()
    {
        var document = NextWeekBuilder.LayOut(Next, PlanInForce.For(RiderOf(6.5, Experience.Regular), []), SteadyWeeks(6.5, 8), new Watts(243), estimated: true);
        Assert.Contains(document.Notes, n => n.Plain().StartsWith("Threshold power is an estimate from the recordings (243 W)", StringComparison.Ordinal));
        Assert.DoesNotContain(LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8)).Notes, n => n.Contains("estimate", StringComparison.Ordinal));
    }

    [Fact]
    public void A_lighter_week_of_the_layouts_own_says_which_weeks_it_looked_at()
    {
        var document = LayOut(RiderOf(6.5, Experience.Regular), SteadyWeeks(6.5, 8, lighterEvery: 0));
        Assert.Contains(document.Notes, n => n.Plain().StartsWith("None of the last three weeks was lighter", StringComparison.Ordinal));
    }

    // The same minutes each day of each week, all easy; every fourth week lighter.
    private static ImmutableArray<WeekFacts> EvenWeeks(int count, params int[] minutes)
    {
        var weeks = ImmutableArray.CreateBuilder<WeekFacts>();
        var load = new LoadState(0, 0);
        for (var w = count; w >= 1; w--)
        {
            var start = Next.PlusWeeks(-w);
            var lighter = (w - 2) % 4 == 0;
            var days = minutes.Select(m => lighter ? m * 6 / 10 : m).Select((m, d) => PlannedRides.DayOf(
                start.PlusDays(d), m == 0 ? PlannedDay.Rest : new PlannedDay(d == 5 ? DayKind.Long : DayKind.Endurance, m), new Limits()));
            weeks.Add(WeekFacts.Build([.. days], load, Next.PlusWeeks(-count), lighter ? ExceptionKind.Lighter : null));
            load = weeks[^1].LoadAfter;
        }
        return weeks.ToImmutable();
    }

    private static NextWeekDocument LayOut(Rider rider, ImmutableArray<WeekFacts> weeks, double? threshold = 250) =>
        NextWeekBuilder.LayOut(Next, PlanInForce.For(rider, []), weeks, threshold is { } t ? new Watts(t) : null);

    private static Rider RiderOf(double hours, Experience experience) => new() { Experience = experience, Plan = new TrainingPlan { WeeklyHours = hours } };

    // Weeks as steady as a rider of that volume would ride: a hard Tuesday, a long ride, easy riding, every fourth week lighter.
    private static ImmutableArray<WeekFacts> SteadyWeeks(
        double hours, int count, int longDay = 5, int? longMinutes = null, bool hardSunday = false, int lighterEvery = 4, int workMinutes = 15)
    {
        var weeks = ImmutableArray.CreateBuilder<WeekFacts>();
        var load = new LoadState(0, 0);
        for (var w = count; w >= 1; w--)
        {
            var start = Next.PlusWeeks(-w);
            var factor = lighterEvery > 0 && (w - 2) % lighterEvery == 0 ? 0.6 : 1;
            var facts = Enumerable.Range(0, 7).Select(d => PlannedRides.DayOf(start.PlusDays(d), Day(d, hours * factor, longDay, longMinutes, hardSunday, workMinutes), new Limits()));
            weeks.Add(WeekFacts.Build([.. facts], load, Next.PlusWeeks(-count), factor < 1 ? ExceptionKind.Lighter : null));
            load = weeks[^1].LoadAfter;
        }
        return weeks.ToImmutable();
    }

    private static PlannedDay Day(int day, double hours, int longDay, int? longMinutes, bool hardSunday, int workMinutes)
    {
        var longRide = longMinutes ?? (int)(hours * 60 * 0.4);
        if (day == longDay)
            return new PlannedDay(DayKind.Long, longRide);
        if (day == 1 || (hardSunday && day == 6))
            return new PlannedDay(DayKind.High, Math.Max(60, workMinutes), workMinutes);
        return day is 2 or 4 ? new PlannedDay(DayKind.Endurance, Math.Max(20, (int)((hours * 60 - longRide - 60) / 2))) : PlannedDay.Rest;
    }
}
