using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Roster;

/// <summary>A finding of several riders, told once.</summary>
internal sealed class SharedBlock : Block
{
    private const float Air = 2.5f;
    private const float MarkRoom = 12;
    private const float TextAt = 62;
    private readonly RosterDocument.SharedFinding _shared;
    private readonly List<TextLine> _lines;
    private readonly float _width;

    /// <param name="shared">The finding.</param>
    /// <param name="roster">The riders.</param>
    /// <param name="width">Width, pt.</param>
    public SharedBlock(RosterDocument.SharedFinding shared, RosterDocument roster, FontSet fonts, float width)
    {
        (_shared, _width) = (shared, width);
        var labels = Shown.List(roster.Riders.Where(rider => shared.Riders.Contains(rider.Folder)).Select(rider => rider.Label));
        _lines = LineBreaker.Break(fonts, [new Span(shared.Name + "  ", Styles.Strong), new Span($"{labels}.", Styles.Body)], width - TextAt);
    }

    /// <inheritdoc/>
    public override float Height => (2 * Air) + _lines.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + _width, y);
        y += Air;
        var baseline = y + Styles.Body.Ascent;
        VerdictMark.Draw(surface, _shared.Verdict, x, baseline, Styles.Body.Size);
        surface.Text(Formatting.Words.Of(_shared.Verdict), Styles.Strong with { Colour = Palette.Rust }, x + MarkRoom, baseline);
        foreach (var line in _lines)
        {
            line.Draw(surface, x + TextAt, y + line.Ascent);
            y += line.Leading;
        }
    }
}
