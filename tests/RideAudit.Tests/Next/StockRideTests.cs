using NodaTime;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
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

    /// <summary>A row's own blocks come before those of its name, and rows of one name may have other blocks each.</summary>
    [Fact]
    public void A_row_is_ridden_as_its_own_blocks_say_else_as_its_name_says_else_as_such_rides_are()
    {
        var stock = new RideStock(RiddenWeeks.RiderOf(5, Experience.Regular), new Limits(), Monday);
        StockRide Of(string? name, string? blocks) =>
            stock.Of(new PlannedSession { Date = Monday, Kind = PlannedKind.High, Minutes = 60, Session = name, Blocks = blocks is null ? null : SessionBlocks.Read(blocks, out _) })!;
        const string Fours = "15 min easy, 4 x 4 min 110-115 %, 3 min easy between, easy to the end";
        const string Ones = "15 min easy, 10 x 1 min 118-124 %, 1 min easy between, easy to the end";

        var (fours, ones, unnamed) = (Of("hills", Fours), Of("hills", Ones), Of(null, Ones));

        Assert.NotEqual(fours.Figures.Stress, ones.Figures.Stress);
        Assert.Equal(ones.Figures.Stress, unnamed.Figures.Stress);
        Assert.Equal(("hills", "hills", null), (fours.Name, ones.Name, unnamed.Name));
        var library = SessionLibrary.All.First(s => s.Kind == PlannedKind.High && s.ShortestDay <= 60);
        Assert.Equal(fours.Figures.Stress, Of(library.Name, Fours).Figures.Stress);
        Assert.NotEqual(fours.Figures.Stress, Of(library.Name, null).Figures.Stress);
        StockRide[] all = [fours, ones, unnamed, Of(library.Name, null), Of("unheard of", null)];
        Assert.All(all, r => Assert.True(r.Stands));
        Assert.Equal([false, false, false, false, true], all.Select(r => r.IsUsual));
    }

    [Fact]
    public void Nothing_is_ridden_in_no_time() => Assert.Null(new RideStock(RiddenWeeks.RiderOf(5, Experience.Regular), new Limits(), Monday).Easy(SessionPurpose.Recovery, 0));

    private static StockRide RideOf(RideKind kind, bool longEnough)
    {
        var fitted = FittedSession.Fit(SessionBlocks.Read("63-69 % to the end", out _)!, 60)!;
        var figures = PlannedTrace.FiguresOf(fitted, Monday, RiddenWeeks.RiderOf(5, Experience.Regular), new Limits());
        return new StockRide("loop", null, fitted, figures with { Kind = kind, LongEnough = longEnough, Stress = 100, Bands = new BandSeconds(3600, 0, 0) });
    }
}
