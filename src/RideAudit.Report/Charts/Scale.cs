namespace RideAudit.Report.Charts;

/// <summary>Round limits and ticks of a value axis.</summary>
/// <param name="Low">Bottom.</param>
/// <param name="High">Top.</param>
/// <param name="Step">Distance of ticks.</param>
internal readonly record struct Scale(double Low, double High, double Step)
{
    private static readonly double[] Steps = [1, 2, 2.5, 5, 10];

    /// <summary>A scale from 0 or below to at least the largest value, with about <paramref name="ticks"/> ticks.</summary>
    public static Scale For(IEnumerable<double> values, int ticks)
    {
        double[] all = [0, .. values];
        double low = all.Min(), high = Math.Max(all.Max(), low + 1);
        double rough = (high - low) / ticks;
        double magnitude = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double step = Math.Max(1, Steps.First(candidate => candidate * magnitude >= rough) * magnitude);
        return new Scale(Math.Floor(low / step) * step, Math.Ceiling(high / step) * step, step);
    }
}
