using System.Globalization;
using System.Net;
using System.Text;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using static RideAudit.Report.Drawing.Numerals;

namespace RideAudit.Report.Svg;

/// <summary>One page as the inside of an SVG element: text as text, each letter placed.</summary>
/// <param name="fonts">The fonts that text is set in.</param>
/// <param name="number">The page, counted from 1; names that must differ between pages start with it.</param>
/// <param name="family">Notes a glyph as drawn and gives the family that it is drawn with.</param>
internal sealed class SvgPage(FontSet fonts, int number, Func<Face, (string Family, FontUse Use)> family) : Surface(fonts)
{
    private readonly StringBuilder _content = new();
    private int _clips;

    /// <summary>The elements.</summary>
    public string Content => _content.ToString();

    /// <summary>Text as XML may hold it.</summary>
    public static string Escape(string text) => WebUtility.HtmlEncode(text);

    /// <inheritdoc/>
    public override void Clipped(Area area, Action draw)
    {
        var id = string.Create(CultureInfo.InvariantCulture, $"clip-{number}-{++_clips}");
        _content.Append($"<clipPath id=\"{id}\">{Rectangle(area)}/></clipPath><g clip-path=\"url(#{id})\">\n");
        draw();
        _content.Append("</g>\n");
    }

    /// <inheritdoc/>
    public override void Link(Area area, string target) => LinkOut(area, "#" + target);

    /// <inheritdoc/>
    public override void LinkOut(Area area, string address) =>
        _content.Append($"<a href=\"{Escape(address)}\">{Rectangle(area)} fill=\"none\" pointer-events=\"all\"/></a>\n");

    /// <inheritdoc/>
    public override void Anchor(float x, float y, string name) =>
        _content.Append($"<g id=\"{Escape(name)}\"><path d=\"M{Plain(x)} {Plain(y)}\"/></g>\n");

    /// <inheritdoc/>
    protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline)
    {
        (var name, var use) = family(run.Face);
        foreach (var glyph in run.Glyphs)
            use.Number(glyph);
        var text = string.Concat(run.Glyphs.Select(glyph => char.ConvertFromUtf32(glyph.CodePoint)));
        var across = string.Join(' ', run.Glyphs.Select(glyph => Plain((style.Slanted ? 0 : x) + glyph.X)));
        var slant = style.Slanted ? $" transform=\"matrix(1 0 {Plain(-TextStyle.Slant)} 1 {Plain(x)} {Plain(baseline)})\"" : "";
        _content.Append($"<text font-family=\"{name}\" font-size=\"{Plain(run.Size)}\" fill=\"{Hex(style.Colour)}\" x=\"{across}\" y=\"{Plain(style.Slanted ? 0 : baseline)}\"{slant}>{Escape(text)}</text>\n");
    }

    /// <inheritdoc/>
    protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
    {
        var dashes = pen.Dash > 0 ? $" stroke-dasharray=\"{Plain(pen.Dash)} {Plain(pen.Gap)}\"" : "";
        var joins = pen.Rounded ? " stroke-linejoin=\"round\"" : "";
        _content.Append($"<path fill=\"none\" stroke=\"{Hex(pen.Colour)}\" stroke-width=\"{Plain(pen.Width)}\"{dashes}{joins} d=\"{string.Concat(pieces.Select(Path))}\"/>\n");
    }

    /// <inheritdoc/>
    protected override void Polygon(Point[] corners, Colour colour) => _content.Append($"<path fill=\"{Hex(colour)}\" d=\"{Path(corners)}Z\"/>\n");

    private static string Hex(Colour colour) => $"#{colour.Red:X2}{colour.Green:X2}{colour.Blue:X2}";

    private static string Path(Point[] points) => "M" + string.Join('L', points.Select(point => $"{Plain(point.X)} {Plain(point.Y)}"));

    private static string Rectangle(Area area) =>
        $"<rect x=\"{Plain(area.Left)}\" y=\"{Plain(area.Top)}\" width=\"{Plain(area.Width)}\" height=\"{Plain(area.Height)}\"";
}
