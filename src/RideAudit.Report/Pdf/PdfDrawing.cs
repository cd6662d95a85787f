using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using SkiaSharp;

namespace RideAudit.Report.Pdf;

/// <summary>Draws pages as a PDF: once to learn which glyphs are needed, once with fonts cut down to them.</summary>
internal static class PdfDrawing
{
    private const string Producer = "RideAudit";

    /// <summary>Writes the pages.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="fonts">Their fonts.</param>
    /// <param name="title">The document's title.</param>
    /// <param name="subject">Its subject.</param>
    /// <param name="date">Date written into it, so that two runs agree.</param>
    /// <param name="output">Where to write; left open.</param>
    public static void Write(IPages pages, FontSet fonts, string title, string subject, DateTime date, Stream output)
    {
        using var ledger = new GlyphLedger();
        Rehearse(pages, fonts, ledger);
        ledger.Cut();
        DateTime written = DateTime.SpecifyKind(date, DateTimeKind.Utc);
        var metadata = new SKDocumentPdfMetadata(SKDocumentPdfMetadata.DefaultRasterDpi)
        {
            Title = title,
            Subject = subject,
            Creator = Producer,
            Producer = Producer,
            Creation = written,
            Modified = written,
        };
        output.Write(PdfFinish.Apply(Draw(pages, fonts, ledger, metadata), [.. pages.Outline]));
    }

    private static void Rehearse(IPages pages, FontSet fonts, GlyphLedger ledger)
    {
        using var recorder = new SKPictureRecorder();
        for (int page = 0; page < pages.Count; page++)
        {
            SKCanvas canvas = recorder.BeginRecording(new SKRect(0, 0, pages.Sheet.Width, pages.Sheet.Height));
            pages.Draw(page, new Ink(canvas, fonts, ledger));
            using SKPicture _ = recorder.EndRecording();
        }
    }

    private static byte[] Draw(IPages pages, FontSet fonts, GlyphLedger ledger, SKDocumentPdfMetadata metadata)
    {
        using var buffer = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(buffer, metadata))
        {
            for (int page = 0; page < pages.Count; page++)
            {
                pages.Draw(page, new Ink(document.BeginPage(pages.Sheet.Width, pages.Sheet.Height), fonts, ledger));
                document.EndPage();
            }

            document.Close();
        }

        return buffer.ToArray();
    }
}
