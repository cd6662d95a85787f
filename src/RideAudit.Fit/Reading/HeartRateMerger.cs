using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Reading;

/// <summary>Fills records that have no heart rate of their own from hr messages.</summary>
internal static class HeartRateMerger
{
    private const double HoldSeconds = 5;

    /// <summary>Gives each such record the mean of the second that ends at it, or the last value of up to five seconds before.</summary>
    /// <returns>How many records were filled.</returns>
    public static int Merge(HeartRateSeries series, RecordColumns columns)
    {
        if (series.Count == 0)
            return 0;
        var seconds = series.Seconds.ToArray();
        var beats = series.BeatsPerMinute.ToArray();
        Array.Sort(seconds, beats);
        var heartRates = columns.Writable(RecordColumn.HeartRate);
        var merged = 0;
        for (var i = 0; i < heartRates.Length; i++)
        {
            if (!float.IsNaN(heartRates[i]) || columns.Times[i] == RecordChannels.NoTime)
                continue;
            heartRates[i] = ValueAt(columns.Times[i], seconds, beats);
            merged += float.IsNaN(heartRates[i]) ? 0 : 1;
        }

        return merged;
    }

    private static float ValueAt(uint time, double[] seconds, byte[] beats)
    {
        var end = FirstAfter(seconds, time);
        var start = FirstAfter(seconds, time - 1.0);
        if (start == end)
            return end > 0 && time - seconds[end - 1] <= HoldSeconds ? beats[end - 1] : float.NaN;
        var sum = 0;
        for (var i = start; i < end; i++)
            sum += beats[i];
        return (float)sum / (end - start);
    }

    private static int FirstAfter(double[] seconds, double time)
    {
        int low = 0, high = seconds.Length;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (seconds[middle] > time)
                high = middle;
            else
                low = middle + 1;
        }

        return low;
    }
}
