using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pdf;
using RideAudit.Report.Roster;
using RideAudit.Report.Words;

namespace RideAudit.Report;

/// <summary>Draws a roster's overview as a PDF: who needs the coach first, and why in one line each.</summary>
public static class RosterPdf
{
    /// <summary>Writes the overview; about twenty riders a page, as many pages as they need.</summary>
    /// <param name="output">Where to write; left open.</param>
    /// <param name="options">The paper; room for notes is a review's and does nothing here.</param>
    /// <remarks>
    /// Each rider's label leads to the review's file by a link relative to the overview, and the file is named in print as well: not
    /// every reader of PDFs follows links to files. The same roster and options give the same bytes on every system, as
    /// long as Inter has every character.
    /// </remarks>
    /// <exception cref="IOException">The output cannot be written.</exception>
    public static void Write(RosterDocument roster, Stream output, PageOptions options)
    {
        ArgumentNullException.ThrowIfNull(roster);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(options);
        Write(roster, output, options, FontSet.OfThisMachine);
    }

    /// <summary>As <see cref="Write(RosterDocument, Stream, PageOptions)"/>, with given fonts.</summary>
    internal static void Write(RosterDocument roster, Stream output, PageOptions options, FontSet fonts) =>
        output.Write(PdfMaker.Make(new RosterPages(roster, options, fonts), fonts, Title(roster), RosterWords.Headline(roster), roster.AsOf));

    /// <summary>The document's title.</summary>
    internal static string Title(RosterDocument roster) => $"{Shown.Tally(roster.Riders.Length, "rider")}, as of {Shown.FullDate(roster.AsOf)}";
}
