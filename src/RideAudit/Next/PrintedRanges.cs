using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Sessions;

namespace RideAudit.Next;

/// <summary>The span of minutes printed for each ride: as wide as both ends, and an uneven road with either, keep what the layout keeps.</summary>
internal sealed class PrintedRanges
{
    private const int LongFrom = 120;
    private const int MiddleFrom = 60;
    private const int Step = 5;
    private static readonly double[] Shares = [1, 0.5, 0];

    private PrintedRanges(ImmutableArray<int> least, ImmutableArray<int> most) => (Least, Most) = (least, most);

    /// <summary>Least minutes by day; 0 on a day without a ride of its own.</summary>
    public ImmutableArray<int> Least { get; }

    /// <summary>Most minutes by day.</summary>
    public ImmutableArray<int> Most { get; }

    public static PrintedRanges Of(WeekFrame frame, Layout layout, WeekJudge judge)
    {
        var wanting = judge.Wanting(layout.Rides.AsSpan());
        var weight = Weigh(judge, layout.Rides);
        foreach (var share in Shares)
        {
            var least = Ends(frame, layout, share, -1);
            var most = Ends(frame, layout, share, 1);
            if (share == 0 || (Keeps(least) && Keeps(most)))
                return new PrintedRanges(Minutes(least), Minutes(most));
        }
        throw new InvalidOperationException("The last share is none.");

        // One rule less broken does not make up for another.
        bool Keeps(ImmutableArray<ImmutableArray<StockRide>> rides) =>
            Weigh(judge, rides) <= weight && !judge.Wanting(rides.AsSpan()).Except(wanting).Any();
    }

    private static double Weigh(WeekJudge judge, ImmutableArray<ImmutableArray<StockRide>> rides) =>
        judge.Weigh(judge.Facts(rides.AsSpan()), rides.AsSpan());

    private static ImmutableArray<int> Minutes(ImmutableArray<ImmutableArray<StockRide>> rides) => [.. rides.Select(r => r.Sum(s => s.Minutes))];

    private static ImmutableArray<ImmutableArray<StockRide>> Ends(WeekFrame frame, Layout layout, double share, int sign) =>
        [.. layout.Rides.Select((rides, i) => rides is [{ Stands: false, IsHard: false } ride] ? [End(frame, frame.Days[i], ride, share, sign)] : rides)];

    private static StockRide End(WeekFrame frame, DayFrame day, StockRide ride, double share, int sign)
    {
        var width = ride.Minutes >= LongFrom ? 10 : ride.Minutes >= MiddleFrom ? 5 : ride.Kind == PlannedKind.Recovery ? 10 : 5;
        var minutes = ride.Minutes + sign * ((int)(width * share) / Step * Step);
        minutes = Math.Clamp(minutes, Math.Min(DayFrame.LeastRide, ride.Minutes), Math.Max(ride.Minutes, Math.Min(day.Free, frame.Aim.MostMinutes)));
        // An easy hour counts as rest to the rules, a minute more does not; the long ride is as long as it is asked to be.
        var short60 = (int)frame.Limits.ShortDayMinutes;
        if (ride.Minutes <= short60)
            minutes = Math.Min(minutes, short60);
        if (ride.Figures.LongEnough)
            minutes = Math.Max(minutes, Math.Min(ride.Minutes, frame.Aim.LongMinutes));
        return ride.Purpose is { } purpose && SessionLibrary.Find(ride.Name!) is { } session && session.Purpose == purpose
            ? frame.Stock.Of(session, minutes) ?? ride
            : ride;
    }
}
