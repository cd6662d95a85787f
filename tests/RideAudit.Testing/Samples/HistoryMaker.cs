using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Plan;

namespace RideAudit.Testing.Samples;

/// <summary>Makes the weeks before a sample week; loads follow the stress with the method's weights.</summary>
public static class HistoryMaker
{
    public static ImmutableArray<HistoryEntry> Make(ReviewSpec spec, ImmutableArray<RideEntry> rides)
    {
        var random = new Random(7);
        double chronic = 0, acute = 0, planned = spec.PlannedHours ?? 5;
        var weeks = ImmutableArray.CreateBuilder<HistoryEntry>();
        for (var ago = spec.HistoryWeeks - 1; ago >= 0; ago--)
        {
            var past = ago == 0 ? null : spec.PastExceptions.GetValueOrDefault(ago) ?? (ago % 4 == 3 ? "lighter" : null);
            var lighter = past == "lighter";
            var share = past switch { "lighter" => 0.58, "away" => 0, "event" => 1.6, _ => 0.85 + (random.NextDouble() * 0.25) };
            var hours = Math.Round(planned * share, 2);
            var seconds = (long)(hours * 3600);
            var stress = Math.Round(hours * 58, 1);
            BandEntry bands = new((long)(seconds * 0.78), (long)(seconds * 0.13), seconds - (long)(seconds * 0.78) - (long)(seconds * 0.13));
            double longest = (long)(planned * 3600 * Math.Min(share, lighter ? 0.22 : past == "event" ? 0.8 : 0.38));
            if (ago == 0)
            {
                hours = Math.Round(rides.Sum(ride => ride.DurationSeconds) / 3600.0, 2);
                stress = Math.Round(rides.Sum(ride => ride.Stress ?? 0), 1);
                bands = Sum(rides);
                longest = rides.Select(ride => ride.DurationSeconds).DefaultIfEmpty(0).Max();
            }

            var before = chronic;
            for (var day = 0; day < 7; day++)
            {
                chronic += (1 - Math.Exp(-1 / 42.0)) * ((stress / 7) - chronic);
                acute += (1 - Math.Exp(-1 / 7.0)) * ((stress / 7) - acute);
            }

            weeks.Add(new HistoryEntry
            {
                StartsOn = spec.Start.PlusWeeks(-ago),
                Hours = hours,
                Stress = stress,
                BandSeconds = bands,
                LongestRideSeconds = longest,
                ChronicLoad = Math.Round(chronic, 1),
                AcuteLoad = Math.Round(acute, 1),
                RampPerWeek = Math.Round(chronic - before, 1),
                Exception = Formatting.Words.Find<ExceptionKind>(ago == 0 ? spec.Exception : past),
                SettlingIn = spec.HistoryWeeks - ago <= 6 || spec.SettlingIn,
            });
        }

        return weeks.ToImmutable();
    }

    public static BandEntry Sum(ImmutableArray<RideEntry> rides) => new(
        rides.Sum(ride => ride.BandSeconds.Low), rides.Sum(ride => ride.BandSeconds.Middle), rides.Sum(ride => ride.BandSeconds.High));
}
