using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Normalised power: fourth root of the mean fourth power of the full trailing 30 s means.</summary>
/// <remarks>Allen and Coggan, Training and Racing with a Power Meter, chapter 7 (from memory). First value at the 30th sample.</remarks>
internal static class NormalisedPower
{
    /// <summary>Computes normalised power.</summary>
    /// <param name="trailing">Trailing 30 s power.</param>
    /// <returns>Normalised power, W; null without a full window: not available is not 0.</returns>
    public static Watts? Of(TrailingPower trailing)
    {
        using var phase = Phase.Begin("normalised power");
        double fourthPowers = 0;
        long windows = 0;
        for (var i = 0; i < trailing.Length; i++)
        {
            if (trailing.CountAt(i) < TrailingPower.WindowSeconds)
                continue;
            var mean = trailing.SumAt(i) / TrailingPower.WindowSeconds;
            var square = mean * mean;
            fourthPowers += square * square;
            windows++;
        }
        return windows == 0 ? null : new Watts(Math.Sqrt(Math.Sqrt(fourthPowers / windows)));
    }
}
