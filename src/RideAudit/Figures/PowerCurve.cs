namespace RideAudit.Figures;

/// <summary>The best mean power over every whole duration that a ride holds without missing power: exact, not sampled.</summary>
/// <remarks>
/// Arithmetic. Naively every start is tried for every duration. Here durations and starts are taken in blocks; a block whose upper bound
/// does not beat what is already known is skipped whole (<see cref="CurveSearch"/>). Figures are exact for whole watts, else to binary rounding.
/// </remarks>
internal sealed class PowerCurve
{
    private readonly double[] _sums;
    private readonly int[] _starts;

    private PowerCurve(double[] sums, int[] starts, int longestSeconds)
    {
        _sums = sums;
        _starts = starts;
        LongestSeconds = longestSeconds;
    }

    /// <summary>The longest duration that fits without missing power, s; 0 without power.</summary>
    public int LongestSeconds { get; }

    /// <summary>The best mean over one duration.</summary>
    /// <param name="durationSeconds">Duration, s, 1 to <see cref="LongestSeconds"/>.</param>
    /// <returns>The mean, W, and where one such window starts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No window of that duration fits.</exception>
    public BestPower At(int durationSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(durationSeconds, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(durationSeconds, LongestSeconds);
        return new BestPower(durationSeconds, _sums[durationSeconds] / durationSeconds, _starts[durationSeconds]);
    }

    /// <summary>Computes the curve.</summary>
    /// <param name="powerW">Power on the grid, W, at or above 0, NaN where missing.</param>
    public static PowerCurve Of(ReadOnlySpan<float> powerW)
    {
        var longest = LongestRun(powerW);
        if (longest == 0)
            return new PowerCurve([0], [0], 0);
        var search = new CurveSearch(powerW, longest);
        search.Run();
        return new PowerCurve(search.Best, search.Starts, longest);
    }

    private static int LongestRun(ReadOnlySpan<float> powerW)
    {
        int longest = 0, run = 0;
        foreach (var power in powerW)
        {
            run = float.IsNaN(power) ? 0 : run + 1;
            longest = Math.Max(longest, run);
        }
        return longest;
    }
}
