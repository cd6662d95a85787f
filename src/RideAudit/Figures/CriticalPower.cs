using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Critical power and the work that can be done above it, from a straight line of work over time.</summary>
/// <remarks>
/// Work = W′ + CP × time, least squares of work on time: Monod and Scherrer 1965, Ergonomics 8:329–338, and Moritani, Nagata, deVries and
/// Muro 1981, Ergonomics 24:339–350. Other forms of the same model (power over 1 ÷ time) give other values on noisy efforts.
/// </remarks>
/// <param name="Power">Critical power, W, above 0.</param>
/// <param name="WorkAboveJ">W′, work above critical power, J, above 0.</param>
internal readonly record struct CriticalPower(Watts Power, double WorkAboveJ)
{
    /// <summary>Fits the line.</summary>
    /// <param name="efforts">Duration, s, and mean power, W, of each effort.</param>
    /// <returns>Null with fewer than two different durations, or where either value is not above 0: such efforts were not maximal.</returns>
    public static CriticalPower? Fit(IReadOnlyList<(double Seconds, double MeanW)> efforts)
    {
        if (efforts.Count < 2)
            return null;
        var meanTime = efforts.Average(e => e.Seconds);
        var meanWork = efforts.Average(e => e.Seconds * e.MeanW);
        var spread = efforts.Sum(e => (e.Seconds - meanTime) * (e.Seconds - meanTime));
        if (!(spread > 0))
            return null;
        var slope = efforts.Sum(e => (e.Seconds - meanTime) * (e.Seconds * e.MeanW - meanWork)) / spread;
        var intercept = meanWork - slope * meanTime;
        return slope > 0 && intercept > 0 ? new CriticalPower(new Watts(slope), intercept) : null;
    }
}
