using System.Collections.Immutable;

namespace RideAudit.Next;

/// <summary>Looks for the layout that the rules, and then a coach, like best: patterns first, then minutes.</summary>
/// <remarks>Patterns come in the order of taste, so that the first that keeps everything and meets the hours is the best of all; the search stops where taste alone is worse than the best so far.</remarks>
internal sealed class WeekSearch(WeekFrame frame)
{
    // Patterns of the same make differ in order alone: when so many of one make fail, the make is at fault.
    private const int MostOfOneMake = 24;
    private const int MostPatterns = 1200;
    private const double HoursWeight = 30;
    private const double NothingRidden = 1e5;
    private const double BackCost = 0.2;
    // Shares of the hours aimed at, steps back in the hard sessions, and recovery rides in place of easy ones.
    private static readonly (double Hours, int Back, int Recoveries)[] Variants =
        [(1, 0, 0), (1, 0, 1), (1, 1, 0), (1, 2, 0), (0.94, 0, 0), (0.88, 0, 0), (1.06, 0, 0), (0.94, 2, 1), (1, 4, 0), (0.94, 4, 1), (1, 9, 0), (0.88, 9, 0), (0.8, 1, 0), (0.72, 9, 0)];
    private readonly WeekJudge _judge = new(frame);
    private readonly WeekMinutes _minutes = new(frame, new SessionChoice(frame));
    private Layout? _best;
    private int _tried;

    public WeekJudge Judge => _judge;

    /// <summary>The best layout; null when there is no pattern at all.</summary>
    public Layout? Find()
    {
        var made = new Dictionary<int, int>();
        var patterns = 0;
        foreach (var (taste, pattern) in PatternSearch.Of(frame))
        {
            if (taste >= _best?.Score || patterns == MostPatterns)
                break;
            var make = MakeOf(pattern);
            var of = made.GetValueOrDefault(make);
            if (of == MostOfOneMake)
                continue;
            made[make] = of + 1;
            patterns++;
            Pattern(pattern, taste);
        }
        return _best is null ? null : _best with { Tried = _tried };
    }

    private static int MakeOf(Slot[] pattern)
    {
        var make = 0;
        foreach (var slot in pattern)
            make += 1 << 3 * (int)slot;
        return make;
    }

    private void Pattern(Slot[] pattern, double taste)
    {
        foreach (var (share, back, recoveries) in Variants)
        {
            if (_minutes.Fill(pattern, (int)(share * frame.Aim.Minutes), back, recoveries) is { } rides && Offer(rides, taste + back * BackCost) == 0)
                return;
        }
    }

    /// <summary>Judges a layout as written and on an uneven road; the worse counts.</summary>
    /// <returns>What the rules weigh; 0 when every one is kept.</returns>
    private double Offer(ImmutableArray<ImmutableArray<StockRide>> rides, double taste)
    {
        _tried++;
        var written = _judge.Facts(rides.AsSpan());
        var score = taste + HoursWeight * Math.Abs(written.RideSeconds / 60 - frame.Aim.Minutes) / Math.Max(1, frame.Aim.Minutes);
        if (written.RideCount == 0 && frame.Aim.Rides > 0)
            score += NothingRidden;
        if (_best is not null && score >= _best.Score)
            return 1;
        var room = _best is null ? double.MaxValue : _best.Score - score;
        var weight = _judge.Weigh(written, rides.AsSpan(), room);
        if (_best is null || score + weight < _best.Score)
            _best = new Layout(rides, written, score + weight, 0);
        return weight;
    }
}
