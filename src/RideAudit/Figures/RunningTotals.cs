using RideAudit.Rides;

namespace RideAudit.Figures;

/// <summary>A ride's power added up from its start, so that the sum of any stretch is one subtraction; and the stretches without missing power.</summary>
/// <remarks>Exact for whole watts, and for all that 32-bit samples of one ride add up to but the last few of 53 bits.</remarks>
internal readonly ref struct RunningTotals
{
    private readonly Lent<double> _totals;

    /// <param name="powerW">Power on the grid, W, NaN where missing.</param>
    public RunningTotals(ReadOnlySpan<float> powerW)
    {
        _totals = new Lent<double>(powerW.Length + 1);
        Runs = [];
        var totals = _totals.Span;
        totals[0] = 0;
        var (total, start) = (0.0, 0);
        for (var i = 0; i < powerW.Length; i++)
        {
            var power = powerW[i];
            if (float.IsNaN(power))
            {
                Take(start, i);
                start = i + 1;
            }
            else
            {
                total += power;
            }
            totals[i + 1] = total;
        }
        Take(start, powerW.Length);
    }

    /// <summary>True where power is missing on some second.</summary>
    public bool HasGaps => Runs is not [(0, var end)] || end < Totals.Length - 1;

    /// <summary>The sum up to each second, W·s, one more than there are seconds; missing power adds nothing.</summary>
    public ReadOnlySpan<double> Totals => _totals.Span;

    /// <summary>Stretches without missing power, half-open, in order; a pause ends none.</summary>
    public List<(int Start, int End)> Runs { get; }

    public void Dispose() => _totals.Dispose();

    private void Take(int start, int end)
    {
        if (end > start)
            Runs.Add((start, end));
    }
}
