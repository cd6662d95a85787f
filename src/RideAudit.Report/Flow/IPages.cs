using RideAudit.Report.Drawing;

namespace RideAudit.Report.Flow;

/// <summary>Something set on pages, each of which can be drawn more than once.</summary>
internal interface IPages
{
    /// <summary>The paper.</summary>
    Sheet Sheet { get; }

    /// <summary>Number of pages.</summary>
    int Count { get; }

    /// <summary>Lines of the outline and the named places they lead to, in order.</summary>
    IEnumerable<OutlineLine> Outline { get; }

    /// <summary>Draws a page, counted from 0.</summary>
    void Draw(int page, Surface surface);
}
