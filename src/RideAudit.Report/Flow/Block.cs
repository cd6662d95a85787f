using RideAudit.Report.Drawing;

namespace RideAudit.Report.Flow;

/// <summary>Something that stands on one page and is never split.</summary>
internal abstract class Block
{
    /// <summary>Depth, pt.</summary>
    public abstract float Height { get; }

    /// <summary>White space above, dropped at the top of a page.</summary>
    public float SpaceBefore { get; init; }

    /// <summary>Stays on the page of the block after it.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Drawn again above this block when it is the first of a later page: a table's head.</summary>
    public Block? RunningHead { get; init; }

    /// <summary>Its line in the document's outline; null when it has none.</summary>
    public string? Outline { get; init; }

    /// <summary>What it is to a reader who does not see it; null where its parts say so themselves.</summary>
    public virtual Tag? Tag => Drawing.Tag.Paragraph;

    /// <summary>The text that stands for a figure; null for text.</summary>
    public virtual string? Alternative => null;

    /// <summary>Draws it as what it is.</summary>
    public void DrawTagged(Surface surface, float x, float y)
    {
        if (Tag is { } tag)
            surface.Tagged(tag, Alternative, () => Draw(surface, x, y));
        else
            Draw(surface, x, y);
    }

    /// <summary>Draws with the top left corner at a point.</summary>
    public abstract void Draw(Surface surface, float x, float y);
}
