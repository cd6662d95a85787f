using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>What the words of an effort mean as shares of threshold power or heart rate.</summary>
/// <remarks>
/// Common practice, no source: easy riding at 55 to 65 % of threshold power, very easy at 40 to 52 %; feel and heart rate beside power from memory.
/// A rider who goes all out holds what the length allows: the anchors are those of a trained rider (from memory), joined by straight lines over the logarithm of the time.
/// </remarks>
internal static class EffortShares
{
    private static readonly (double Seconds, double Percent)[] AllOutAnchors =
        [(5, 330), (15, 280), (30, 220), (60, 160), (180, 122), (300, 115), (1200, 107), (3600, 100)];

    private static readonly (double Feel, double Percent)[] FeelAnchors =
        [(0, 35), (1, 45), (2, 55), (3, 65), (4, 76), (5, 86), (6, 93), (7, 99), (8, 107), (9, 117), (10, 130)];

    // Threshold heart rate belongs to threshold power; the cuts of the heart-rate bands lie beside those of power.
    private static readonly (double Power, double HeartRate)[] HeartRateAnchors =
        [(40, 62), (52, 71), (60, 77), (70, 85), (76, 89), (84, 92), (92, 96), (100, 99), (106, 101), (120, 105)];

    /// <summary>Shares of threshold power, or of threshold heart rate for an effort told in it, %.</summary>
    /// <param name="seconds">How long it is held, s.</param>
    public static (double From, double To) RangeOf(Effort effort, int seconds) => effort.Measure switch
    {
        EffortMeasure.Easy => (55, 65),
        EffortMeasure.VeryEasy => (40, 52),
        EffortMeasure.Feel => (Along(FeelAnchors, effort.From), Along(FeelAnchors, effort.To)),
        EffortMeasure.AllOut => (AllOut(seconds), AllOut(seconds)),
        _ => (effort.From, effort.To),
    };

    /// <summary>The share meant in one second of a stretch, %: the middle of its range, or the place on its ramp.</summary>
    /// <param name="second">The second, 0 first.</param>
    /// <param name="seconds">The stretch's length, s.</param>
    public static double At(Effort effort, int second, int seconds)
    {
        var (from, to) = RangeOf(effort, seconds);
        return effort.Ramps ? from + (to - from) * (second + 0.5) / seconds : (from + to) / 2;
    }

    /// <summary>Easy in the sense that warm-ups are: below the middle band.</summary>
    public static bool IsEasy(Effort effort) => effort.Measure switch
    {
        EffortMeasure.Easy or EffortMeasure.VeryEasy => true,
        EffortMeasure.AllOut => false,
        EffortMeasure.Feel => effort.To < 4,
        EffortMeasure.HeartRateShare => Math.Max(effort.From, effort.To) < 90,
        _ => Math.Max(effort.From, effort.To) < 76,
    };

    /// <summary>The share of threshold heart rate that goes with a share of threshold power held for minutes, %.</summary>
    /// <param name="powerPercent">Share of threshold power, %.</param>
    public static double HeartRateBeside(double powerPercent) => Along(HeartRateAnchors, powerPercent);

    /// <summary>The feel, 0 to 10, that goes with a share of threshold power.</summary>
    /// <param name="powerPercent">Share of threshold power, %.</param>
    public static double FeelOf(double powerPercent) => Along([.. FeelAnchors.Select(a => (a.Percent, a.Feel))], powerPercent);

    /// <summary>The feel, 0 to 10, that goes with a share of threshold heart rate.</summary>
    /// <param name="heartRatePercent">Share of threshold heart rate, %.</param>
    public static double FeelBeside(double heartRatePercent) =>
        FeelOf(Along([.. HeartRateAnchors.Select(a => (a.HeartRate, a.Power))], heartRatePercent));

    private static double AllOut(int seconds) => Along([.. AllOutAnchors.Select(a => (Math.Log(a.Seconds), a.Percent))], Math.Log(seconds));

    private static double Along((double X, double Y)[] anchors, double x)
    {
        if (x <= anchors[0].X)
            return anchors[0].Y;
        for (var i = 1; i < anchors.Length; i++)
        {
            var ((x0, y0), (x1, y1)) = (anchors[i - 1], anchors[i]);
            if (x <= x1)
                return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
        }
        return anchors[^1].Y;
    }
}
