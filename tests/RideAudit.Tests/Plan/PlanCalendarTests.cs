using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Tests.Plan;

public class PlanCalendarTests
{
    private static readonly LocalDate Monday = new(2026, 5, 18);

    [Fact]
    public void Planned_hours_shrink_by_a_seventh_for_each_day_out()
    {
        var calendar = Of([Span(2, 6, ExceptionKind.Ill)]);

        Assert.Equal(5, calendar.DaysOut(Monday));
        Assert.Equal(2, calendar.HoursAsked(Monday, 7, 0.6)!.Value, 9);
        Assert.Equal(7, calendar.HoursAsked(Monday.PlusDays(7), 7, 0.6)!.Value, 9);
    }

    [Theory]
    [InlineData(0, 6, 4.2)]
    [InlineData(0, 2, 5.8)]
    public void A_lighter_day_asks_for_six_tenths_of_its_seventh(int from, int to, double hours) =>
        Assert.Equal(hours, Of([Span(from, to, ExceptionKind.Lighter)]).HoursAsked(Monday, 7, 0.6)!.Value, 9);

    [Fact]
    public void A_lighter_week_cut_short_by_illness_asks_for_what_is_left_of_it() =>
        Assert.Equal(3.6, Of([Span(0, 6, ExceptionKind.Lighter), Span(6, 9, ExceptionKind.Ill)]).HoursAsked(Monday, 7, 0.6)!.Value, 9);

    [Fact]
    public void Of_several_kinds_on_a_day_ill_counts_before_event_before_away_before_lighter()
    {
        var calendar = Of([Span(0, 6, ExceptionKind.Lighter), Span(1, 6, ExceptionKind.Away), Span(2, 6, ExceptionKind.Event), Span(3, 3, ExceptionKind.Ill)]);

        Assert.Equal(
            [ExceptionKind.Lighter, ExceptionKind.Away, ExceptionKind.Event, ExceptionKind.Ill],
            Enumerable.Range(0, 4).Select(d => calendar.KindOn(Monday.PlusDays(d))!.Value));
        Assert.Null(calendar.KindOn(Monday.PlusDays(7)));
    }

    [Fact]
    public void Nothing_asks_for_more_on_a_day_out_or_an_event_nor_on_the_day_before()
    {
        var calendar = Of([Span(2, 2, ExceptionKind.Event), Span(5, 5, ExceptionKind.Ill), Span(0, 6, ExceptionKind.Lighter)]);

        Assert.Equal(
            [true, false, false, true, false, false, true],
            Enumerable.Range(0, 7).Select(d => calendar.MayAskForMore(Monday.PlusDays(d))));
    }

    [Fact]
    public void Events_of_a_plan_table_are_event_exceptions_and_its_minutes_the_planned_hours()
    {
        var calendar = Of([Span(1, 1, ExceptionKind.Away)], "2026-05-19,high,60", "2026-05-21,endurance,90", "2026-05-24,event,150");

        Assert.Equal([Monday.PlusDays(6)], calendar.EventDays(Monday).ToArray());
        Assert.True(calendar.Week(Monday).Event);
        Assert.True(calendar.IsPlanned(Monday));
        Assert.Equal(4, calendar.HoursAsked(Monday, 7, 0.6));
    }

    [Fact]
    public void Planned_hours_are_the_latest_dated_ones_on_the_weeks_first_day_and_weekly_hours_before_them()
    {
        var rider = new Rider
        {
            Plan = new TrainingPlan { WeeklyHours = 6 },
            Hours = [new HoursEntry(Monday, 8), new HoursEntry(Monday.PlusDays(9), 9)],
        };
        var calendar = new PlanCalendar(rider, PlanTable.Empty);

        Assert.Equal([6.0, 8, 8, 9], Enumerable.Range(-1, 4).Select(w => calendar.OrdinaryHours(Monday.PlusWeeks(w))!.Value));
        Assert.Equal(6, PlanInForce.For(rider, [], Monday.PlusWeeks(-1)).PlannedHours);
        Assert.Equal((9.0, Tier.High), (PlanInForce.For(rider, [], Monday.PlusWeeks(2)).PlannedHours!.Value, PlanInForce.For(rider, [], Monday.PlusWeeks(2)).Tier!.Value));
    }

    [Fact]
    public void An_absence_before_a_day_is_found_with_its_length_and_whether_it_was_illness()
    {
        var calendar = Of([Span(-6, -4, ExceptionKind.Away), Span(-3, -2, ExceptionKind.Ill)]);

        Assert.Equal(new Absence(Monday.PlusDays(-6), Monday.PlusDays(-2), true), calendar.AbsenceBefore(Monday, 7));
        Assert.Equal(5, calendar.AbsenceBefore(Monday, 7)!.Value.Days);
        Assert.Null(calendar.AbsenceBefore(Monday, 1));
    }

    [Fact]
    public void The_tier_is_the_riders_and_not_that_of_a_week_written_lighter()
    {
        var rider = new Rider { Plan = new TrainingPlan { WeeklyHours = 9 } };
        var table = PlanTable.Merge([PlanTableReader.Read("date,kind,minutes\n2026-05-19,endurance,240", "plan.csv")]);

        var plan = PlanInForce.For(rider, [], Monday, table);

        Assert.Equal((9.0, 4.0, true, Tier.High), (plan.PlannedHours!.Value, plan.AskedHours!.Value, plan.AskedByPlanTable, plan.Tier!.Value));
    }

    [Fact]
    public void A_plan_table_alone_says_the_planned_hours()
    {
        var table = PlanTable.Merge([PlanTableReader.Read("date,kind,minutes\n2026-05-19,endurance,240", "plan.csv")]);

        Assert.Equal((4.0, Tier.Low), (PlanInForce.For(new Rider(), [], Monday, table).PlannedHours!.Value, PlanInForce.For(new Rider(), [], Monday, table).Tier!.Value));
    }

    private static PlanException Span(int from, int to, ExceptionKind kind) => new(Monday.PlusDays(from), Monday.PlusDays(to), kind);

    private static PlanCalendar Of(PlanException[] exceptions, params string[] rows) => new(
        new Rider { Exceptions = [.. exceptions] },
        PlanTable.Merge([PlanTableReader.Read("date,kind,minutes\n" + string.Join('\n', rows), "plan.csv")]));
}
