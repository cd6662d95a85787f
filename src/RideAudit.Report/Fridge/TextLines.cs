using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Text;

namespace RideAudit.Report.Fridge;

/// <summary>Lines that are broken already.</summary>
/// <param name="lines">The lines.</param>
internal sealed class TextLines(List<TextLine> lines) : Block
{
    /// <inheritdoc/>
    public override float Height => lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        foreach (var line in lines)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
