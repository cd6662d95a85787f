using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>A week as a coach draws it, the same week after week but for the lighter ones.</summary>
/// <param name="Name">What a test calls it.</param>
/// <param name="Experience">Whose week it is.</param>
/// <param name="Rides">Its rides.</param>
internal sealed record TradeWeek(string Name, Experience Experience, ImmutableArray<TradeRide> Rides)
{
    private const double LighterShare = 0.6;
    private const int LighterHardMinutes = 45;

    /// <summary>Planned hours, h: what the rides add up to, to a quarter of an hour.</summary>
    public double Hours => Math.Round(Rides.Sum(r => r.Session.Seconds) / 900.0) / 4;

    /// <summary>The lighter week: one hard ride stays, the others become short and easy, easy rides are six tenths as long.</summary>
    public TradeWeek Lighter
    {
        get
        {
            var first = Rides.Select(r => r.Session).FirstOrDefault(IsHard);
            return this with { Rides = [.. Rides.Select(r => r.Session == first ? r : r with { Session = Lightened(r.Session) })] };
        }
    }

    /// <summary>The same week with another ride on a day, or with none.</summary>
    public TradeWeek With(int day, Session? session, int hour = 18)
    {
        var others = Rides.Where(r => r.Day != day);
        return this with { Rides = session is null ? [.. others] : [.. others, new TradeRide(day, hour, session)] };
    }

    /// <summary>The same week with one ride more.</summary>
    public TradeWeek And(int day, Session session, int hour) => this with { Rides = [.. Rides, new TradeRide(day, hour, session)] };

    private static bool IsHard(Session session) => session.Blocks.Any(b => b.IsWork);

    private static Session Lightened(Session session) => IsHard(session)
        ? Session.Even(LighterHardMinutes, 60)
        : Session.Even((int)(session.Seconds / 60 * LighterShare), session.Blocks[0].Percent);
}
