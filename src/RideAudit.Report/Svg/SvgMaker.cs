using System.Globalization;
using System.Text;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;

namespace RideAudit.Report.Svg;

/// <summary>Makes SVG pictures of pages, their text selectable and findable, their links links.</summary>
internal static class SvgMaker
{
    private const string Language = "en-GB";

    /// <summary>The pages.</summary>
    /// <param name="fonts">Their fonts.</param>
    /// <param name="title">The document's title.</param>
    public static SvgPages Make(IPages pages, FontSet fonts, string title)
    {
        var used = new List<FontUse>();
        (string Family, FontUse Use) Of(Face face)
        {
            var at = used.FindIndex(use => use.Face == face);
            if (at < 0)
            {
                at = used.Count;
                used.Add(new FontUse(face));
            }

            return (Family(at), used[at]);
        }

        string[] drawn = [.. Enumerable.Range(0, pages.Count).Select(page => Draw(pages, page, new SvgPage(fonts, page + 1, Of), fonts.Printable(title, Weight.Regular)))];
        var faces = new StringBuilder();
        for (var i = 0; i < used.Count; i++)
            faces.Append($"@font-face{{font-family:\"{Family(i)}\";src:url(data:font/ttf;base64,{Convert.ToBase64String(used[i].Cut())})}}\n");
        return new SvgPages([.. drawn], faces.ToString());
    }

    private static string Family(int font) => string.Create(CultureInfo.InvariantCulture, $"review-{font + 1}");

    private static string Draw(IPages pages, int page, SvgPage surface, string title)
    {
        pages.Draw(page, surface);
        string width = Numerals.Plain(pages.Sheet.Width), height = Numerals.Plain(pages.Sheet.Height);
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}pt\" height=\"{height}pt\" lang=\"{Language}\" xml:space=\"preserve\">"
            + $"<title>{SvgPage.Escape(title)}, page {(page + 1).ToString(CultureInfo.InvariantCulture)}</title>\n{surface.Content}</svg>\n";
    }
}
