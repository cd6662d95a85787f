namespace RideAudit.Document;

/// <summary>Figures that tables add to what the document's entries hold.</summary>
public static class EntryFigures
{
    /// <summary>Shares of the bands; null when nothing was banded.</summary>
    /// <param name="bands">Seconds in the bands.</param>
    public static SplitEntry? Split(this BandEntry bands)
    {
        double all = bands.Low + bands.Middle + bands.High;
        return all > 0 ? new SplitEntry(bands.Low / all, bands.Middle / all, bands.High / all) : null;
    }

    /// <summary>The kind is that of a hard ride or day.</summary>
    /// <param name="kind">A kind in one word; null for none.</param>
    public static bool IsHard(string? kind) => kind is "high" or "threshold";

    /// <summary>The week's hard days.</summary>
    /// <param name="week">The week.</param>
    public static int HardDays(this WeekEntry week) => week.Days.Count(d => IsHard(d.Kind));
}
