using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Tests.Simulation;

/// <summary>Simulated sessions are told as a coach would tell them, whatever the noise: common practice, no source.</summary>
public sealed class SessionKindTests
{
    private const int Seeds = 15;
    private const int OtherSeeds = 10;
    private const int MayDisagree = 1;

    /// <summary>The most that an easy ride may show and still be easy: intensity ratio, %, and sustained time at the threshold share, min.</summary>
    private static readonly (double RatioPercent, double Minutes) Easy = (76, 6);

    private static readonly OffsetDateTime Start = new LocalDateTime(2026, 5, 4, 9, 0).WithOffset(Offset.Zero);

    private static readonly SimulatedRider Rider = new();

    private static readonly Dictionary<string, (Session Session, Func<RideFigures, bool> Agrees)> Cases =
        All().ToDictionary(c => c.Session.Name, c => c);

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_session_is_told_as_a_coach_tells_it(string name)
    {
        var (session, agrees) = Cases[name];
        Assert.InRange(Disagreeing(session, agrees, 1, Seeds), 0, MayDisagree);
        Assert.InRange(Disagreeing(session, agrees, 1 + Seeds, OtherSeeds), 0, MayDisagree);
    }

    [Fact]
    public void A_rolling_gravel_ride_at_a_ratio_of_72_percent_is_an_easy_ride()
    {
        var disagreeing = Enumerable.Range(1, Seeds + OtherSeeds).Count(seed =>
        {
            var ride = Simulator.Ride(Sessions.Gravel, seed);
            var atRatio = Figures(ride.Times(0.72 / Figures(ride).IntensityRatio!.Value));
            Assert.Equal(72, AsShown.Percent(atRatio.IntensityRatio!.Value));
            return !(atRatio.Kind == RideKind.Endurance && IsEasy(atRatio));
        });
        Assert.InRange(disagreeing, 0, MayDisagree);
    }

    [Fact]
    public void An_even_70_percent_on_the_road_has_most_of_its_time_low()
    {
        var low = Enumerable.Range(1, Seeds).Select(seed => Figures(Simulator.Ride(Sessions.Easy[3], seed)).Bands.LowShare!.Value).ToArray();
        Assert.InRange(low.Min(), 0.67, 0.80);
        Assert.InRange(low.Max(), 0.80, 0.95);
    }

    private static IEnumerable<(Session Session, Func<RideFigures, bool> Agrees)> All()
    {
        foreach (var session in Sessions.Threshold.Append(Sessions.OverUnders))
        {
            yield return (session, IsThreshold);
            yield return (Sessions.Indoors(session), IsThreshold);
        }
        foreach (var session in Sessions.High)
        {
            yield return (session, ride => ride.Kind == RideKind.High);
            yield return (Sessions.Indoors(session), ride => ride.Kind == RideKind.High);
        }
        foreach (var session in Sessions.Easy)
            yield return (session, ride => ride.Kind == RideKind.Endurance && IsEasy(ride));
        foreach (var session in Sessions.TooHard)
            yield return (session, ride => IsThreshold(ride) || (ride.Kind == RideKind.Endurance && !IsEasy(ride)));
        foreach (var session in Sessions.Long)
            yield return (session, ride => ride.Kind == RideKind.Long && ride.LongEnough);
        yield return (Sessions.LongWithWork, ride => IsThreshold(ride) && ride.LongEnough);
        yield return (Sessions.Recovery, ride => ride.Kind == RideKind.Recovery);
    }

    private static int Disagreeing(Session session, Func<RideFigures, bool> agrees, int firstSeed, int seeds) =>
        Enumerable.Range(firstSeed, seeds).Count(seed => !agrees(Figures(Simulator.Ride(session, seed))));

    private static bool IsThreshold(RideFigures ride) => ride.Kind == RideKind.Threshold;

    private static bool IsEasy(RideFigures ride) =>
        AsShown.Percent(ride.IntensityRatio!.Value) <= Easy.RatioPercent
        && AsShown.Minutes(ride.AtThresholdShare!.SustainedSeconds) <= Easy.Minutes;

    private static RideFigures Figures(SimulatedRide ride) => FigureBuilder.Build([ride.RideAt(Start)], Rider.File, new Limits())[0];
}
