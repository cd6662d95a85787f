namespace RideAudit.Figures;

/// <summary>Arithmetic on a channel of the grid, NaN being a missing value.</summary>
internal static class Channel
{
    /// <summary>Mean of the values there are; NaN without any.</summary>
    public static double Mean(ReadOnlySpan<float> values)
    {
        double sum = 0;
        var count = 0;
        foreach (var value in values)
        {
            if (float.IsNaN(value))
                continue;
            sum += value;
            count++;
        }
        return sum / count;
    }
}
