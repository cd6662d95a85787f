namespace RideAudit.Units;

/// <summary>Comparisons that a last binary digit does not decide: 0.75 − 0.07 is not a hair above 0.68.</summary>
internal static class Close
{
    /// <summary>Wider than any rounding of binary fractions, finer than any figure shown.</summary>
    public const double Hair = 1e-9;

    /// <summary>Above a limit by more than a hair.</summary>
    public static bool Above(double value, double limit) => value > limit + Hair;

    /// <summary>Below a limit by more than a hair.</summary>
    public static bool Below(double value, double limit) => value < limit - Hair;
}
