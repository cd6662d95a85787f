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

    /// <summary>The last value; null without any.</summary>
    public static double? Last(ReadOnlySpan<float> values)
    {
        for (var i = values.Length - 1; i >= 0; i--)
            if (!float.IsNaN(values[i]))
                return values[i];
        return null;
    }
}
