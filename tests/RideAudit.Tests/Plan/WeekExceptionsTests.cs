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
    [InlineData(ExceptionKind.Away, 4, 9, false)]
    [InlineData(ExceptionKind.Away, -10, 20, true)]
    public void One_event_day_makes_an_event_week_and_four_days_make_a_lighter_or_an_away_week(ExceptionKind kind, int from, int to, bool holds)
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
    public void Two_spans_of_a_kind_count_their_days_together_and_a_shared_day_once()
    {
        PlanException[] spans =
        [
            new(Monday, Monday.PlusDays(1), ExceptionKind.Away),
            new(Monday.PlusDays(1), Monday.PlusDays(2), ExceptionKind.Away),
        ];

        Assert.True(WeekExceptions.For([.. spans], Monday).None);
        Assert.True(WeekExceptions.For([.. spans, new(Monday.PlusDays(6), Monday.PlusDays(6), ExceptionKind.Away)], Monday).Away);
    }
}
