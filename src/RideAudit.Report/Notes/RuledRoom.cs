using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Look;

namespace RideAudit.Report.Notes;

/// <summary>Blank ruled lines for a note by hand.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class RuledRoom(float width) : Block
{
    private const int Lines = 4;
    private const float LineDepth = 20;

    /// <inheritdoc/>
    public override float Height => Lines * LineDepth;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text("Notes", Styles.Small, x, y + 9);
        for (var line = 1; line <= Lines; line++)
            surface.Line(x, y + (line * LineDepth), x + width, y + (line * LineDepth), Palette.Hairline, 0.6f);
    }
}
