using System.Buffers.Binary;
using System.Security.Cryptography;
using RideAudit.Ingest.Archives;
using RideAudit.Ingest.Csv;
using RideAudit.Ingest.Fit;
using RideAudit.Ingest.Xml;

namespace RideAudit.Ingest;

/// <summary>Sends what a file holds to the reader for what it is, unpacking as needed.</summary>
internal sealed class FileOpener(IngestContext context, ReadLimits limits, CancellationToken cancel)
{
    public ReadLimits Limits => limits;

    public CancellationToken Cancel => cancel;

    /// <summary>Opens a file or an archive's entry.</summary>
    /// <param name="name">The name rides are shown under.</param>
    /// <param name="input">The content; an archive needs one that can seek.</param>
    /// <param name="length">Its length, bytes, as promised; no more is read.</param>
    /// <param name="layers">The archives around it.</param>
    /// <returns>One content for the file, or one for each file in an archive.</returns>
    public IReadOnlyList<FileContent> Open(string name, Stream input, long length, ArchiveLayers layers)
    {
        // Asked before anything is read: pipes and devices have no length, and reading one may never end.
        if (length == 0)
            return [Refuse(name, FileKind.Empty)];
        var head = new byte[(int)Math.Min(length, ContentSniffer.LooksAt)];
        var read = input.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        var kind = ContentSniffer.KindOf(head.AsSpan(0, read));
        if (kind == FileKind.Zip && input.CanSeek)
        {
            input.Position = 0;
            return ZipReader.Read(name, input, layers, this);
        }
        if (!IsWorthReading(kind) && !IsPromising(name))
            return [];
        if (length > limits.LargestFileBytes)
            return [TooLarge(name)];
        var bytes = new byte[length];
        head.AsSpan(0, read).CopyTo(bytes);
        read += input.ReadAtLeast(bytes.AsSpan(read), bytes.Length - read, throwOnEndOfStream: false);
        return Open(name, read == bytes.Length ? bytes : bytes[..read], layers);
    }

    /// <summary>Opens content that is in memory.</summary>
    public IReadOnlyList<FileContent> Open(string name, byte[] bytes, ArchiveLayers layers)
    {
        var kind = ContentSniffer.KindOf(bytes);
        return kind switch
        {
            FileKind.Zip => ZipReader.Read(name, new MemoryStream(bytes, writable: false), layers, this),
            FileKind.Gzip => GzipReader.Read(name, bytes, layers, this),
            _ => [Read(name, bytes, kind)],
        };
    }

    public FileContent TooLarge(string name) => RideEndings.Promise(name)
        ? FileContent.Unusable(name, "too large", $"This file is larger than the {limits.LargestFileBytes >> 20} MB read of one file: no ride is that long, so check what it is.")
        : FileContent.Nothing(name);

    public static FileContent Refuse(string name, FileKind kind)
    {
        if (!RideEndings.Promise(name))
            return FileContent.Nothing(name);
        return kind == FileKind.Empty
            ? FileContent.Unusable(name, "empty file", "This file has no bytes: it is still being copied, or the copy failed; copy it again from the device.")
            : FileContent.Unusable(name, "not a ride", Sentence(kind));
    }

    private FileContent Read(string name, byte[] bytes, FileKind kind)
    {
        if (RiderTexts.Are(name) && bytes.Length <= RiderTexts.LargestBytes)
            return new FileContent { File = name, Texts = [new NamedText(name, TextBytes.Reader(bytes).ReadToEnd())] };
        var asked = context.ForNextFile();
        var content = Read(name, bytes, kind, asked);
        return asked.WasAsked ? content with { Again = other => Read(name, bytes, kind, other) } : content;
    }

    private static FileContent Read(string name, byte[] bytes, FileKind kind, IngestContext context)
    {
        var content = kind switch
        {
            FileKind.Fit => FitRideReader.Read(name, bytes, context),
            FileKind.Tcx => TcxReader.Read(name, bytes, context),
            FileKind.Gpx => GpxReader.Read(name, bytes, context),
            FileKind.Text => CsvReading.Read(name, bytes, context),
            // A FIT file cut inside its header has nothing that tells what it was, but its name.
            FileKind.Binary when RideEndings.IsFit(name) => FitRideReader.Read(name, bytes, context),
            _ => Refuse(name, kind),
        };
        return content.HoldsRides
            ? content with { Hash = BinaryPrimitives.ReadUInt128BigEndian(SHA256.HashData(bytes)) }
            : content;
    }

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
}
