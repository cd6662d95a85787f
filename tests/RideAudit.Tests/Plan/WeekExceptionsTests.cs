using NodaTime;
using RideAudit.Plan;

namespace RideAudit.Tests.Plan;

public class WeekExceptionsTests
{
    private static readonly LocalDate Monday = new(2026, 5, 18);

    [Theory]
    [InlineData(ExceptionKind.Event, 6, 6, true)]
    [InlineData(ExceptionKind.Event, 7, 7, false)]
    [InlineData(ExceptionKind.Lighter, 0, 3, true)]
    [InlineData(ExceptionKind.Lighter, 0, 2, false)]
    [InlineData(ExceptionKind.Away, 3, 9, true)]
    [InlineData(ExceptionKind.Away, 4, 9, true)]
    [InlineData(ExceptionKind.Away, 5, 9, false)]
    [InlineData(ExceptionKind.Ill, 6, 9, true)]
    [InlineData(ExceptionKind.Ill, 7, 9, false)]
    [InlineData(ExceptionKind.Away, -10, 20, true)]
    public void One_event_or_ill_day_makes_the_week_three_days_an_away_week_and_four_a_lighter_one(ExceptionKind kind, int from, int to, bool holds)
    {
        var exceptions = WeekExceptions.For([new PlanException(Monday.PlusDays(from), Monday.PlusDays(to), kind)], Monday);

        Assert.Equal(holds ? kind : null, exceptions.Leading);
        Assert.Equal(!holds, exceptions.None);
    }

    [Fact]
    public void A_week_may_be_lighter_and_hold_an_event()
    {
        var exceptions = WeekExceptions.For(
            [
                new PlanException(Monday, Monday.PlusDays(4), ExceptionKind.Lighter),
                new PlanException(Monday.PlusDays(5), Monday.PlusDays(6), ExceptionKind.Event),
            ],
            Monday);

        Assert.Equal(new WeekExceptions(Lighter: true, Event: true, Away: false), exceptions);
        Assert.Equal(ExceptionKind.Event, exceptions.Leading);
    }

    [Fact]
    public void An_ill_day_leads_and_asks_for_no_hours()
    {
        var exceptions = WeekExceptions.For(
            [new PlanException(Monday, Monday, ExceptionKind.Ill), new PlanException(Monday.PlusDays(6), Monday.PlusDays(6), ExceptionKind.Event)],
            Monday);

        Assert.Equal((true, true, true), (exceptions.Ill, exceptions.Away, exceptions.Event));
        Assert.Equal(ExceptionKind.Ill, exceptions.Leading);
        Assert.Equal(new WeekExceptions(false, false, true, true), default(WeekExceptions).With(ExceptionKind.Ill));
    }

    [Fact]
    public void Two_spans_of_a_kind_count_their_days_together_and_a_shared_day_once()
    {
        PlanException[] spans =
        [
            new(Monday, Monday.PlusDays(1), ExceptionKind.Away),
            new(Monday.PlusDays(1), Monday.PlusDays(1), ExceptionKind.Away),
        ];

        Assert.True(WeekExceptions.For([.. spans], Monday).None);
        Assert.True(WeekExceptions.For([.. spans, new(Monday.PlusDays(6), Monday.PlusDays(6), ExceptionKind.Away)], Monday).Away);
    }
}
