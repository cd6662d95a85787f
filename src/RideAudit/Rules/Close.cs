namespace RideAudit.Rules;

/// <summary>Comparisons that a last binary digit does not decide: 0.75 − 0.07 is not a hair above 0.68.</summary>
internal static class Close
{
    private const double Hair = 1e-9;

    public static bool Above(double value, double limit) => value > limit + Hair;

    public static bool Below(double value, double limit) => value < limit - Hair;
}
