using RideAudit.Ingest.Csv;

namespace RideAudit.Ingest;

/// <summary>Sends a file's bytes to the reader for what they are.</summary>
internal static class FileOpener
{
    /// <param name="name">The name rides are shown under.</param>
    /// <param name="bytes">The content.</param>
    /// <param name="expectRide">Its ending promises a ride: say so when it is not one.</param>
    /// <param name="context">The rider.</param>
    public static FileContent Open(string name, byte[] bytes, bool expectRide, IngestContext context)
    {
        var kind = ContentSniffer.KindOf(bytes);
        return kind switch
        {
            FileKind.Fit => FitRideReader.Read(name, bytes, context),
            FileKind.Text when expectRide => CsvReading.Read(name, bytes, context),
            _ when !expectRide => FileContent.Nothing,
            FileKind.Empty => FileContent.Unusable(name, "empty file", "This file has no bytes: copy it again from the device."),
            _ => FileContent.Unusable(name, "not a ride", $"This is {Describe(kind)}, not a ride file."),
        };
    }

    private static string Describe(FileKind kind) => kind switch
    {
        FileKind.WebPage => "a web page",
        FileKind.Json => "a JSON file",
        FileKind.Tcx or FileKind.Gpx or FileKind.OtherXml => "an XML file",
        FileKind.Zip => "a zip archive",
        FileKind.Gzip => "a gzip archive",
        FileKind.Pdf => "a PDF",
        FileKind.Image => "a picture",
        _ => "a file of an unknown kind",
    };
}
