using RideAudit.Review;

namespace RideAudit.Cli.Output;

/// <summary>The review as a PDF and as a picture.</summary>
internal static class Drawing
{
    /// <summary>All pages.</summary>
    public static void WritePdf(Stream stream, ReviewDocument document, Paper paper, bool roomForNotes) => throw new NotImplementedException();

    /// <summary>Page one.</summary>
    public static void WritePng(Stream stream, ReviewDocument document, Paper paper, bool roomForNotes) => throw new NotImplementedException();
}
