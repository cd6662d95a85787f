using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Raster;
using RideAudit.Report;

namespace RideAudit.Cli.Output;

/// <summary>The review as a PDF and as a picture, the roster's overview, and weeks to come.</summary>
internal static class Drawing
{
    /// <summary>All pages.</summary>
    public static void WritePdf(Stream stream, ReviewDocument document, ReviewTraces traces, PageOptions options) =>
        Into(stream, buffer => ReviewPdf.Write(document, buffer, options, traces));

    /// <summary>The card for a phone.</summary>
    public static void WriteCard(Stream stream, ReviewDocument document) => Picture(stream, buffer => ReviewPicture.WriteCard(document, buffer));

    /// <summary>Page one.</summary>
    public static void WritePageOne(Stream stream, ReviewDocument document, PageOptions options) => Picture(stream, buffer => ReviewPicture.WritePageOne(document, buffer, options));

    /// <summary>A roster's overview.</summary>
    public static void WriteRoster(Stream stream, RosterDocument roster, PageOptions options) => Into(stream, buffer => RosterPdf.Write(roster, buffer, options));

    /// <summary>Weeks to come, to hang up.</summary>
    public static void WriteNext(Stream stream, NextDocument document, PageOptions options) => Into(stream, buffer => NextPdf.Write(document, buffer, options));

    private static void Picture(Stream stream, Action<Stream> draw)
    {
        try
        {
            Into(stream, draw);
        }
        catch (DllNotFoundException missing)
        {
            throw new UserError(missing.Message);
        }
    }

    private static void Into(Stream stream, Action<Stream> draw)
    {
        using var buffer = new MemoryStream();
        draw(buffer);
        buffer.WriteTo(stream);
    }
}
