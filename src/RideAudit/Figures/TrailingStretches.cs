using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Finds the stretches over which a trailing mean is at or above a share of threshold power.</summary>
internal static class TrailingStretches
{
    /// <summary>The stretches as half-open ranges of grid seconds; a pause or missing power ends one.</summary>
    /// <param name="trailing">Trailing power.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    /// <param name="longestDip">Stretches this far apart or nearer are one, the dip counting, s.</param>
    /// <param name="shortest">Shorter ones are dropped after joining, s.</param>
    public static List<(int Start, int End)> Find(TrailingPower trailing, Watts threshold, double sharePercent, int longestDip, double shortest)
    {
        using var phase = Phase.Begin("stretches");
        var found = new List<(int Start, int End)>();
        if (!trailing.MayReach(sharePercent, threshold.Value))
            return found;
        var atLeast = trailing.At(sharePercent, threshold.Value);
        foreach (var segment in trailing.Segments)
        {
            // Start and end of the stretch that is open; an empty one is none.
            var (start, end) = (0, 0);
            for (var i = segment.Start; i < segment.End; i++)
            {
                if (!atLeast[i])
                {
                    if (end > start && trailing.CountAt(i) == 0)
                        Close(ref start, ref end, found, shortest);
                    continue;
                }
                if (i - end > longestDip)
                    Close(ref start, ref end, found, shortest);
                if (end == start)
                    start = i;
                end = i + 1;
            }
            Close(ref start, ref end, found, shortest);
        }
        return found;
    }

    private static void Close(ref int start, ref int end, List<(int Start, int End)> found, double shortest)
    {
        if (end > start && end - start >= shortest)
            found.Add((start, end));
        (start, end) = (0, 0);
    }
}
