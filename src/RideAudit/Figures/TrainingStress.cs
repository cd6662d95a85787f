namespace RideAudit.Figures;

/// <summary>Training stress: one hour at threshold is 100 points.</summary>
/// <remarks>Hours of timer time × intensity ratio² × 100: Allen and Coggan, Training and Racing with a Power Meter, chapter 7 (from memory).</remarks>
internal static class TrainingStress
{
    /// <summary>Training stress from an intensity ratio, points.</summary>
    /// <param name="timerSeconds">Timer time, s, not elapsed time.</param>
    /// <param name="intensityRatio">Normalised power over threshold power.</param>
    public static double Of(double timerSeconds, double intensityRatio) =>
        timerSeconds / 3600 * intensityRatio * intensityRatio * 100;
}
