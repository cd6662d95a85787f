using RideAudit.Document;
using RideAudit.Figures;

namespace RideAudit.Report.Tests.Samples;

/// <summary>Threshold power beside second opinions, for samples.</summary>
public static class SampleThresholds
{
    /// <summary>Two steps in force, a best 20 minutes, three efforts; the last in a given ride.</summary>
    public static ThresholdsEntry Make(string lastRide)
    {
        var twenty = new EffortEntry(1200, 251.4, lastRide, new(2026, 6, 12));
        return new ThresholdsEntry
        {
            ThresholdPowerW = 250,
            ThresholdFrom = ThresholdSource.RiderFile,
            ThresholdEstimateW = 238.8,
            BestTwentyMinutes = twenty,
            CriticalPowerW = 241.3,
            WorkAboveCriticalPowerKj = 14.6,
            CriticalPowerEfforts =
            [
                new EffortEntry(180, 322.4, "old/2026-04-02-hill.fit", new(2026, 4, 2)), new EffortEntry(720, 261.6, "old/2026-05-12-intervals.fit", new(2026, 5, 12)), twenty,
            ],
            InForce = [new ThresholdStepEntry(new(2026, 1, 6), 240, ThresholdSource.RiderFile), new ThresholdStepEntry(new(2026, 4, 28), 250, ThresholdSource.RiderFile)],
            Sentence = "Threshold power (FTP) in force: 250 W (rider file). 95 % of the best 20 minutes of the last 90 days is 239 W; three separate best efforts put critical power at 241 W.",
        };
    }
}
