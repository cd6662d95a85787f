using NodaTime;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Sessions;
using RideAudit.Units;

namespace RideAudit.Tests.Next;

/// <summary>What roads make of a session on paper. Shares are common practice, no source.</summary>
public sealed class StockRideTests
{
    private static readonly LocalDate Monday = RiddenWeeks.Monday;

    [Theory]
    [InlineData(RideKind.Endurance, false, nameof(Road.Paper), 100, 3600, 0)]
    [InlineData(RideKind.Endurance, false, nameof(Road.Uneven), 110, 3240, 360)]
    [InlineData(RideKind.Endurance, false, nameof(Road.Heavy), 118.8, 3240, 360)]
    [InlineData(RideKind.Endurance, false, nameof(Road.Levelling), 114, 3240, 360)]
    [InlineData(RideKind.Endurance, true, nameof(Road.Levelling), 100, 3240, 360)]
    [InlineData(RideKind.Recovery, false, nameof(Road.Uneven), 110, 3600, 0)]
    [InlineData(RideKind.High, false, nameof(Road.Uneven), 105, 3420, 180)]
    [InlineData(RideKind.High, false, nameof(Road.Heavy), 113.4, 3420, 180)]
    [InlineData(RideKind.Threshold, false, nameof(Road.Levelling), 100, 3420, 180)]
    public void A_road_takes_easy_time_and_costs_more(RideKind kind, bool longEnough, string road, double stress, double low, double middle)
    {
        var ridden = RideOf(kind, longEnough).On(Monday, Enum.Parse<Road>(road));
        Assert.Equal(stress, ridden.Stress!.Value, 9);
        Assert.Equal((low, middle, 0.0), (Math.Round(ridden.Bands.Low, 6), Math.Round(ridden.Bands.Middle, 6), ridden.Bands.High));
        Assert.Equal(("planned 2026-06-22 loop", Monday), (ridden.File, ridden.Date));
    }

    [Theory]
    [InlineData(RideKind.High, PlannedKind.High)]
    [InlineData(RideKind.Threshold, PlannedKind.Threshold)]
    [InlineData(RideKind.Long, PlannedKind.Long)]
    [InlineData(RideKind.Recovery, PlannedKind.Recovery)]
    [InlineData(RideKind.Endurance, PlannedKind.Endurance)]
    public void A_ride_is_told_in_the_words_of_a_plan(RideKind kind, PlannedKind planned) => Assert.Equal(planned, RideOf(kind, false).Kind);

    [Fact]
    public void Two_rides_of_the_same_figures_are_two()
    {
        var (one, other) = (RideOf(RideKind.High, false), RideOf(RideKind.High, false));
        Assert.NotEqual(one, other);
        Assert.Equal(2, new HashSet<StockRide> { one, other, one }.Count);
    }

    private static StockRide RideOf(RideKind kind, bool longEnough)
    {
        var fitted = FittedSession.Fit(SessionBlocks.Read("63-69 % to the end", out _)!, 60)!;
        var figures = PlannedTrace.FiguresOf(fitted, Monday, RiddenWeeks.RiderOf(5, Experience.Regular), new Limits());
        return new StockRide("loop", null, fitted, figures with { Kind = kind, LongEnough = longEnough, Stress = 100, Bands = new BandSeconds(3600, 0, 0) });
    }
}
