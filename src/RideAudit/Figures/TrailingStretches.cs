using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Finds the stretches over which a trailing mean is at or above a share of threshold power.</summary>
internal static class TrailingStretches
{
    /// <summary>The stretches as half-open ranges of grid seconds; a pause or missing power ends one.</summary>
    /// <param name="trailing">Trailing power.</param>
    /// <param name="threshold">Threshold power, W, above 0.</param>
    /// <param name="sharePercent">The share, %.</param>
    /// <param name="longestDip">Stretches this far apart or nearer are one, the dip counting, s.</param>
    /// <param name="shortest">Shorter ones are dropped after joining, s.</param>
    public static List<(int Start, int End)> Find(TrailingPower trailing, Watts threshold, double sharePercent, int longestDip, double shortest)
    {
        var found = new List<(int Start, int End)>();
        foreach (var segment in trailing.Segments)
        {
            (int Start, int End)? open = null;
            for (var i = segment.Start; i < segment.End; i++)
            {
                if (trailing.CountAt(i) == 0)
                    Close(ref open, found, shortest);
                else if (trailing.IsAtLeast(i, sharePercent, threshold.Value))
                {
                    if (open is { } run && i - run.End > longestDip)
                        Close(ref open, found, shortest);
                    open = (open?.Start ?? i, i + 1);
                }
            }
            Close(ref open, found, shortest);
        }
        return found;
    }

    private static void Close(ref (int Start, int End)? open, List<(int Start, int End)> found, double shortest)
    {
        if (open is { } run && run.End - run.Start >= shortest)
            found.Add(run);
        open = null;
    }
}
