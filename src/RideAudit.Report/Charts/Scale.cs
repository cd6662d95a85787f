namespace RideAudit.Report.Charts;

/// <summary>Round limits and ticks of a value axis.</summary>
/// <param name="Low">Bottom.</param>
/// <param name="High">Top.</param>
/// <param name="Step">Distance of ticks.</param>
internal readonly record struct Scale(double Low, double High, double Step)
{
    private static readonly double[] Steps = [1, 2, 2.5, 5, 10];

    /// <summary>Values with a tick, lowest first.</summary>
    public IEnumerable<double> Ticks
    {
        get
        {
            (var low, var step) = (Low, Step);
            return Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(tick => low + (tick * step));
        }
    }

    /// <summary>Decimals that a tick's label needs.</summary>
    public int Decimals => Step == Math.Round(Step) ? 0 : 1;

    /// <summary>A scale from 0 or below to at least the largest value, with about <paramref name="ticks"/> ticks, at least 1 apart.</summary>
    public static Scale For(IEnumerable<double> values, int ticks)
    {
        double[] all = [0, .. values];
        double low = all.Min(), high = Math.Max(all.Max(), low + 1);
        double rough = (high - low) / ticks, magnitude = 1;
        while (magnitude * 10 <= rough)
            magnitude *= 10;
        var step = Steps.First(candidate => candidate * magnitude >= Math.Min(rough, 10 * magnitude)) * magnitude;
        return new Scale(Math.Floor(low / step) * step, Math.Ceiling(high / step) * step, step);
    }
}
