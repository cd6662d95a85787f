using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Output;

/// <summary>The review as a PDF and as a picture.</summary>
internal static class Drawing
{
    /// <summary>All pages.</summary>
    public static void WritePdf(Stream stream, ReviewDocument document, Paper paper, bool roomForNotes) =>
        ReviewPdf.Write(document, stream, Options(paper, roomForNotes));

    /// <summary>Page one.</summary>
    public static void WritePng(Stream stream, ReviewDocument document, Paper paper, bool roomForNotes) =>
        ReviewPicture.WritePageOne(document, stream, Options(paper, roomForNotes));

    private static PageOptions Options(Paper paper, bool roomForNotes) => new()
    {
        Paper = paper == Paper.Letter ? Report.Paper.Letter : Report.Paper.A4,
        RoomForNotes = roomForNotes,
    };
}
