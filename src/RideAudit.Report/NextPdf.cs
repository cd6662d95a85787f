using RideAudit.Document.Layouts;
using RideAudit.Report.Fonts;
using RideAudit.Report.Fridge;
using RideAudit.Report.Pdf;

namespace RideAudit.Report;

/// <summary>Draws weeks to come as a PDF to hang up: a page a week, and before several weeks the programme at a glance.</summary>
public static class NextPdf
{
    /// <summary>Writes the pages.</summary>
    /// <param name="document">The weeks; at least one.</param>
    /// <param name="output">Where to write; left open.</param>
    /// <param name="options">The paper; what else it says is a review's and does nothing here.</param>
    /// <remarks>The same weeks and options give the same bytes on every system, as long as Inter has every character. The cautions stand on each page, for each may hang alone.</remarks>
    /// <exception cref="ArgumentException">There is no week.</exception>
    /// <exception cref="IOException">The output cannot be written.</exception>
    public static void Write(NextDocument document, Stream output, PageOptions options)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(options);
        if (document.Weeks.IsEmpty)
            throw new ArgumentException("There is no week to draw.", nameof(document));
        Write(document, output, options, FontSet.OfThisMachine);
    }

    /// <summary>As <see cref="Write(NextDocument, Stream, PageOptions)"/>, with given fonts.</summary>
    internal static void Write(NextDocument document, Stream output, PageOptions options, FontSet fonts) =>
        output.Write(PdfMaker.Make(new FridgePages(document, options, fonts), fonts, Title(document), ToComeWords.Headline(document.Weeks[0]), document.AsOf));

    /// <summary>The document's title.</summary>
    internal static string Title(NextDocument document) => $"{document.Rider.Label}, {ToComeWords.Span(document)}";
}
