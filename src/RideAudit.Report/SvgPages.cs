using System.Collections.Immutable;

namespace RideAudit.Report;

/// <summary>A document's pages as SVG pictures.</summary>
/// <param name="Pages">
/// One <c>svg</c> element a page, without a font in it: for a web page that holds <paramref name="FontFaces"/> once. A link leads to the
/// element whose <c>id</c> it names, perhaps on another page.
/// </param>
/// <param name="FontFaces">Style rules that bring the fonts, as data, cut down to what all pages draw.</param>
public sealed record SvgPages(ImmutableArray<string> Pages, string FontFaces)
{
    /// <summary>A page that carries its fonts and stands alone as a file.</summary>
    /// <param name="page">The page, counted from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such page.</exception>
    public string Standalone(int page)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(page);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(page, Pages.Length);
        var drawn = Pages[page];
        var inside = drawn.IndexOf('>', StringComparison.Ordinal) + 1;
        return $"{drawn[..inside]}<style>{FontFaces}</style>{drawn[inside..]}";
    }
}
