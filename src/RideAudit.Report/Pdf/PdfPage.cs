using System.Text;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using static RideAudit.Report.Drawing.Numerals;

namespace RideAudit.Report.Pdf;

/// <summary>One page of a PDF: its content, links and named places.</summary>
/// <param name="fonts">The fonts that text is set in.</param>
/// <param name="height">Height of the page, pt.</param>
/// <param name="embedded">The document's font for one of the pages' fonts.</param>
internal sealed class PdfPage(FontSet fonts, float height, Func<Face, PdfFont> embedded) : Surface(fonts)
{
    private const double Unseen = 0.05;
    private readonly StringBuilder _content = new();
    private string _fill = "";
    private string _line = "";

    /// <summary>The drawing operators.</summary>
    public string Content => _content.ToString();

    /// <summary>What the page holds in the order in which it is read; the place of each is its number in the content.</summary>
    public List<(Tag Tag, string? Alternative)> Parts { get; } = [];

    /// <summary>The links, as annotations.</summary>
    public List<string> Links { get; } = [];

    /// <summary>Named places, y from the page's foot.</summary>
    public List<(string Name, float X, float Y)> Places { get; } = [];

    /// <inheritdoc/>
    public override void Tagged(Tag tag, string? alternative, Action draw)
    {
        if (tag == Tag.Artifact)
        {
            _content.Append("/Artifact BMC\n");
        }
        else
        {
            _content.Append($"/{PdfStructure.Role(tag)} <</MCID {PdfObjects.Whole(Parts.Count)}>> BDC\n");
            Parts.Add((tag, alternative));
        }

        draw();
        _content.Append("EMC\n");
    }

    /// <inheritdoc/>
    public override void Clipped(Area area, Action draw)
    {
        (var fillBefore, var lineBefore) = (_fill, _line);
        _content.Append($"q {At(area.Left, area.Bottom)} {Plain(area.Width)} {Plain(area.Height)} re W n\n");
        draw();
        _content.Append("Q\n");
        (_fill, _line) = (fillBefore, lineBefore);
    }

    /// <inheritdoc/>
    public override void Link(Area area, string target) => Links.Add($"{Annotation(area)}/Dest/{target}>>");

    /// <inheritdoc/>
    public override void LinkOut(Area area, string address)
    {
        var escaped = address.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("(", "\\(", StringComparison.Ordinal).Replace(")", "\\)", StringComparison.Ordinal);
        Links.Add($"{Annotation(area)}/A <</Type/Action/S/URI/URI ({escaped})>>>>");
    }

    /// <inheritdoc/>
    public override void Anchor(float x, float y, string name) => Places.Add((name, x, height - y));

    /// <inheritdoc/>
    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline)
    {
        var font = embedded(run.Face);
        SetFill(style.Colour);
        _content.Append($"BT /{font.Resource} {Plain(run.Size)} Tf 1 0 {(style.Slanted ? Plain(TextStyle.Slant) : "0")} 1 {At(x, baseline)} Tm [<");
        double pen = 0;
        foreach (var glyph in run.Glyphs)
        {
            var ahead = Math.Round(pen - (glyph.X * 1000.0 / run.Size), 2);
            var moves = Math.Abs(ahead) >= Unseen;
            _content.Append($"{(moves ? $">{Plain(ahead)}<" : "")}{font.Number(glyph):X4}");
            pen += font.Advance(glyph.Id) - (moves ? ahead : 0);
        }

        _content.Append(">] TJ ET\n");
    }

    /// <inheritdoc/>
    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
    {
        var dashes = pen.Dash > 0 ? $"{Plain(pen.Dash)} {Plain(pen.Gap)}" : "";
        var wanted = $"{Rgb(pen.Colour)} RG {Plain(pen.Width)} w [{dashes}] 0 d {(pen.Rounded ? 1 : 0)} j\n";
        if (wanted != _line)
            _content.Append(_line = wanted);
        foreach (var piece in pieces)
            Path(piece);
        _content.Append("S\n");
    }

    /// <inheritdoc/>
    protected override void Polygon(Point[] corners, Colour colour)
    {
        SetFill(colour);
        Path(corners);
        _content.Append("f\n");
    }

    private static string Rgb(Colour colour) => $"{Plain3(colour.Red)} {Plain3(colour.Green)} {Plain3(colour.Blue)}";

    // A level of 255 as a share, in thousandths: exact enough to come back as the same level.
    private static string Plain3(byte level) => level switch { 0 => "0", 255 => "1", _ => $".{((level * 1000) + 127) / 255:000}" };

    private void SetFill(Colour colour)
    {
        var wanted = $"{Rgb(colour)} rg\n";
        if (wanted != _fill)
            _content.Append(_fill = wanted);
    }

    private void Path(Point[] points)
    {
        for (var i = 0; i < points.Length; i++)
            _content.Append($"{At(points[i].X, points[i].Y)} {(i == 0 ? 'm' : 'l')}\n");
    }

    private string At(float x, float y) => $"{Plain(x)} {Plain(height - y)}";

    private string Annotation(Area area) =>
        $"<</Type/Annot/Subtype/Link/F 4/Border [0 0 0]/Rect [{At(area.Left, area.Bottom)} {At(area.Right, area.Top)}]";
}
