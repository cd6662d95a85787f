namespace RideAudit.Document;

/// <summary>What tables show of seconds in the bands.</summary>
public static class BandShares
{
    /// <summary>Shares of the bands; null when nothing was banded.</summary>
    /// <param name="bands">Seconds in the bands.</param>
    public static SplitEntry? Split(this BandEntry bands)
    {
        var all = bands.Total;
        return all > 0 ? new SplitEntry(bands.Low / all, bands.Middle / all, bands.High / all) : null;
    }
}
