using RideAudit.Ingest.Archives;
using RideAudit.Ingest.Csv;
using RideAudit.Ingest.Fit;
using RideAudit.Ingest.Text;
using RideAudit.Ingest.Xml;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Ingest;

/// <summary>Sends what a file holds to the reader for what it is, unpacking as needed.</summary>
/// <param name="context">The rider, as far as known.</param>
/// <param name="limits">How much is read at most.</param>
/// <param name="cancel">Stops between an archive's entries.</param>
/// <param name="mayReadAgain">False when the rider is known for good: then no file's bytes are kept.</param>
internal sealed class FileOpener(IngestContext context, ReadLimits limits, CancellationToken cancel, bool mayReadAgain)
{
    private ArchiveWork Unpacking => new(limits, cancel, Open);

    /// <summary>Opens a file or an archive's entry.</summary>
    /// <param name="name">The path with <c>/</c> that its rides are shown under.</param>
    /// <param name="input">The content; an archive needs one that can seek.</param>
    /// <param name="length">Its length, bytes, as promised; no more is read.</param>
    /// <param name="layers">How deep in archives it lies, and what they may still unpack to.</param>
    /// <returns>One content for the file, or one for each file in an archive.</returns>
    public IReadOnlyList<FileContent> Open(string name, Stream input, long length, ArchiveLayers layers)
    {
        // Asked before anything is read: pipes and devices have no length, and reading one may never end.
        if (length == 0)
            return [NoRide.Refuse(name, FileKind.Empty)];
        Span<byte> head = stackalloc byte[(int)Math.Min(length, ContentSniffer.LooksAt)];
        head = head[..input.ReadAtLeast(head, head.Length, throwOnEndOfStream: false)];
        var kind = ContentSniffer.KindOf(head);
        if (kind == FileKind.Zip && input.CanSeek)
        {
            input.Position = 0;
            return ZipReader.Read(name, input, layers, Unpacking);
        }
        if (!NoRide.IsWorthReading(kind) && !NoRide.IsPromising(name))
            return [];
        if (length > limits.LargestFileBytes)
            return [NoRide.TooLarge(name, limits)];
        layers.Budget.Hold(length);
        if (kind == FileKind.Fit && length < limits.ReadAlone && !RiderTexts.Are(name))
        {
            using var lent = new Lent<byte>((int)length);
            return [Read(name, lent.Span[..ReadOn(input, head, lent.Span)])];
        }
        var bytes = GC.AllocateUninitializedArray<byte>((int)length);
        var read = ReadOn(input, head, bytes);
        return Open(name, read == bytes.Length ? bytes : bytes[..read], layers);
    }

    /// <summary>Reads what follows a head that was read already.</summary>
    /// <returns>Bytes in all, no more than the buffer holds.</returns>
    private static int ReadOn(Stream input, ReadOnlySpan<byte> head, Span<byte> buffer)
    {
        using var reading = Phase.Begin("reading");
        head.CopyTo(buffer);
        return head.Length + input.ReadAtLeast(buffer[head.Length..], buffer.Length - head.Length, throwOnEndOfStream: false);
    }

    /// <summary>Reads a FIT file from a buffer that is not kept.</summary>
    private FileContent Read(string name, ReadOnlySpan<byte> fit)
    {
        var asked = context.ForNextFile();
        var content = Hashed(FitRideReader.Read(name, fit, asked), fit);
        if (!asked.WasAsked || !mayReadAgain)
            return content;
        var kept = fit.ToArray();
        return content with { Again = other => Hashed(FitRideReader.Read(name, kept, other), kept) };
    }

    /// <summary>Opens what was unpacked from an archive.</summary>
    private IReadOnlyList<FileContent> Open(string name, Unpacked unpacked, ArchiveLayers layers) =>
        ContentSniffer.KindOf(unpacked.Bytes) == FileKind.Fit && !RiderTexts.Are(name)
            ? [Read(name, unpacked.Bytes)]
            : Open(name, unpacked.ToArray(), layers);

    /// <summary>Opens content that is in memory.</summary>
    public IReadOnlyList<FileContent> Open(string name, byte[] bytes, ArchiveLayers layers)
    {
        var kind = ContentSniffer.KindOf(bytes);
        return kind switch
        {
            FileKind.Zip => ZipReader.Read(name, new MemoryStream(bytes, writable: false), layers, Unpacking),
            FileKind.Gzip => GzipReader.Read(name, bytes, layers, Unpacking),
            _ => [Read(name, bytes, kind)],
        };
    }

    private FileContent Read(string name, byte[] bytes, FileKind kind)
    {
        if (RiderTexts.IsNote(name) && bytes.Length > FolderFiles.LongestNote)
            return NoRide.TooLarge(name, limits);
        if (RiderTexts.Are(name) && bytes.Length <= RiderTexts.LargestBytes)
            return new FileContent { File = name, Texts = [new NamedText(name, TextBytes.Reader(bytes).ReadToEnd())] };
        var asked = context.ForNextFile();
        var content = Read(name, bytes, kind, asked);
        return asked.WasAsked && mayReadAgain ? content with { Again = other => Read(name, bytes, kind, other) } : content;
    }

    private static FileContent Read(string name, byte[] bytes, FileKind kind, IngestContext context)
    {
        var content = kind switch
        {
            FileKind.Fit => FitRideReader.Read(name, bytes, context),
            FileKind.Tcx => TcxReader.Read(name, bytes, context),
            FileKind.Gpx => GpxReader.Read(name, bytes, context),
            FileKind.Text => PlanTables.Read(name, bytes) ?? CsvReading.Read(name, bytes, context),
            // A FIT file cut inside its header has nothing that tells what it was, but its name.
            FileKind.Binary when RideEndings.IsFit(name) => FitRideReader.Read(name, bytes, context),
            _ => NoRide.Refuse(name, kind),
        };
        return Hashed(content, bytes);
    }

    private static FileContent Hashed(FileContent content, ReadOnlySpan<byte> bytes) =>
        content.IsOfUse ? content with { Hash = HashOf(bytes) } : content;

    private static UInt128 HashOf(ReadOnlySpan<byte> bytes)
    {
        using var hashing = Phase.Begin("hashing");
        return ContentHash.Of(bytes);
    }
}
