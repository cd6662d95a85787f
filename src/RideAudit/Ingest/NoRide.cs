namespace RideAudit.Ingest;

/// <summary>Tells what is worth reading, and says of what is no ride what it is.</summary>
internal static class NoRide
{
    /// <summary>Names worth opening, whatever kind the content seems to be.</summary>
    public static bool IsPromising(string name) => RideEndings.Promise(name) || RiderTexts.Are(name);

    /// <summary>Kinds that may hold a ride, whatever the name says.</summary>
    public static bool IsWorthReading(FileKind kind) =>
        kind is FileKind.Fit or FileKind.Gzip or FileKind.Zip or FileKind.Tcx or FileKind.Gpx or FileKind.Text;

    private static string Sentence(FileKind kind) => kind switch
    {
        FileKind.WebPage => "This is a web page, not a ride: the download failed; download the ride again.",
        FileKind.Json => "This is JSON text, not a ride: export the ride as FIT, TCX, GPX or CSV.",
        FileKind.OtherXml => "This is an XML file that is neither TCX nor GPX: export the ride as FIT, TCX, GPX or CSV.",
        FileKind.OtherArchive => "This is an archive of a kind that is not read: unpack it, or pack it as zip.",
        FileKind.Pdf => "This is a PDF, not a ride: export the ride as FIT, TCX, GPX or CSV.",
        FileKind.Image => "This is a picture, not a ride: export the ride as FIT, TCX, GPX or CSV.",
        FileKind.Text => "This is plain text, not a ride: export the ride as FIT, TCX, GPX or CSV.",
        _ => "This is a file of an unknown kind, not a ride: copy it again from the device, or remove it.",
    };

    public static FileContent TooLarge(string name, ReadLimits limits)
    {
        if (RiderTexts.IsNote(name))
            return FileContent.Unusable(name, "too large", $"This note is larger than the {FolderFiles.LongestNote >> 10} KB read of a note: shorten it, or give the file another name.");
        return RideEndings.Promise(name)
            ? FileContent.Unusable(name, "too large", $"This file is larger than the {limits.LargestFileBytes >> 20} MB read of one file: hardly a ride is that long, so check what it is, and export a ride of several days as FIT.")
            : FileContent.Nothing(name);
    }

    public static FileContent Refuse(string name, FileKind kind)
    {
        if (!RideEndings.Promise(name))
            return FileContent.Nothing(name);
        return kind == FileKind.Empty
            ? FileContent.Unusable(name, "empty file", "This file has no bytes: it is still being copied, or the copy failed; copy it again from the device.")
            : FileContent.Unusable(name, "not a ride", Sentence(kind));
    }
}
