using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Review;

/// <summary>Gathers what the season says of whether the rider improves.</summary>
internal static class ProgressWriter
{
    private const int SeasonDays = 182;
    private const int MostBlocks = 4;
    private const int StaleDays = 42;
    private const double NearBpm = 4;
    private const int LeastStretches = 2;
    private static readonly int[] Windows = [60, 300, 1200];

    /// <summary>The entry; empty where nothing was measured.</summary>
    /// <param name="book">Rides, figures and weeks up to the reviewed week.</param>
    public static ProgressEntry Write(Workbook book)
    {
        var lastDay = book.Week.EndsOn;
        RideFigures[] season = [.. book.Figures.Where(r => Period.DaysBetween(r.Date, lastDay) < SeasonDays)];
        var (heartRate, easy) = EasyPower(season, book.Rides.ToDictionary(r => r.File));
        var evidence = EvidenceOn(book, lastDay);
        int? days = evidence is { } date ? Period.DaysBetween(date, lastDay) : null;
        return ProgressWords.Of(new ProgressEntry
        {
            EasyHeartRateBpm = heartRate,
            EasyPowerW = easy,
            LongRideDriftPercent =
            [
                .. season.Where(r => r.HeartRateDriftPercent is not null && (r.LongEnough || r.Kind == RideKind.Long))
                    .Select(r => new ProgressEntry.Figure(r.Date, r.HeartRateDriftPercent!.Value, r.File)),
            ],
            Bests = Blocks(book.Figures, lastDay),
            ThresholdEvidenceOn = evidence,
            ThresholdEvidenceDays = days,
            TestThreshold = days > StaleDays,
        }, ThresholdPower(book));
    }

    private static (double? HeartRate, ImmutableArray<ProgressEntry.Figure> Power) EasyPower(RideFigures[] season, Dictionary<string, Ride> sources)
    {
        var stretches = season
            .Where(r => r.Kind is RideKind.Recovery or RideKind.Endurance or RideKind.Long)
            .Where(r => sources.ContainsKey(r.File))
            .Select(r => (Ride: r, Stretches: SteadyEasy.Of(r, sources[r.File].Grid)))
            .Where(r => r.Stretches.Length > 0)
            .ToArray();
        double[] beats = [.. stretches.SelectMany(r => r.Stretches).Select(s => s.HeartRateBpm).Order()];
        if (beats.Length == 0)
            return (null, []);
        var middle = beats[beats.Length / 2];
        return (middle,
        [
            .. stretches
                .Select(r => (r.Ride, Near: r.Stretches.Where(s => Math.Abs(s.HeartRateBpm - middle) <= NearBpm).ToArray()))
                .Where(r => r.Near.Length >= LeastStretches)
                .Select(r => new ProgressEntry.Figure(r.Ride.Date, r.Near.Average(s => s.PowerW), r.Ride.File)),
        ]);
    }

    private static ImmutableArray<ProgressEntry.BestsOfBlock> Blocks(ImmutableArray<RideFigures> rides, LocalDate lastDay)
    {
        var blocks = ImmutableArray.CreateBuilder<ProgressEntry.BestsOfBlock>();
        for (var ago = MostBlocks - 1; ago >= 0; ago--)
        {
            var end = lastDay.PlusDays(-ago * ProgressEntry.BestsOfBlock.Days);
            var start = end.PlusDays(1 - ProgressEntry.BestsOfBlock.Days);
            var bests = ImmutableArray.CreateBuilder<ProgressEntry.BestOfBlock>();
            foreach (var seconds in Windows)
            {
                if (Best(rides.Where(r => r.Date >= start && r.Date <= end), seconds) is { } best)
                    bests.Add(new ProgressEntry.BestOfBlock(seconds, best, Best(rides.Where(r => r.Date < start), seconds)));
            }
            if (bests.Count > 0)
                blocks.Add(new ProgressEntry.BestsOfBlock(start, bests.ToImmutable()));
        }
        return blocks.ToImmutable();
    }

    private static double? Best(IEnumerable<RideFigures> rides, int seconds)
    {
        double? best = null;
        foreach (var ride in rides)
            if (ride.BestMeanW(seconds) is { } mean && !(best >= mean))
                best = mean;
        return best;
    }

    private static double? ThresholdPower(Workbook book) => book.Figures.LastOrDefault(r => r.Threshold is not null)?.Threshold!.Power.Value;

    // The rider file's line says when it was set; an estimate is as old as the twenty minutes it comes from.
    private static LocalDate? EvidenceOn(Workbook book, LocalDate lastDay)
    {
        var last = book.Figures.LastOrDefault(r => r.Threshold is not null);
        if (last?.Threshold is not { } threshold)
            return null;
        if (threshold.From == ThresholdSource.Estimate)
            return ThresholdOpinion.Of(book.Figures, lastDay).BestTwentyMinutes?.Date;
        return threshold.From is ThresholdSource.RiderFile or ThresholdSource.RiderFileFirstEntry
            ? book.Plan.Rider.Thresholds.Where(t => t.Power is not null && t.From <= lastDay).Select(t => (LocalDate?)t.From).Max()
            : null;
    }
}
