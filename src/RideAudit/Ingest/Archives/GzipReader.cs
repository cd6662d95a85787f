using System.Buffers.Binary;
using System.IO.Compression;

namespace RideAudit.Ingest.Archives;

/// <summary>Reads a file packed with gzip (RFC 1952).</summary>
internal static class GzipReader
{
    private const int FewestBytes = 18;

    public static IReadOnlyList<FileContent> Read(string name, byte[] bytes, ArchiveLayers layers, ArchiveWork work)
    {
        if (layers.Gzips >= ArchiveLayers.MostGzips)
            return Refused(name, "packed too often", "This file is packed with gzip over and over: unpack it by hand.");
        using var stream = new GZipStream(new MemoryStream(bytes, writable: false), CompressionMode.Decompress);
        using var unpacked = Unpacking.Read(stream, LengthSaid(bytes), work.Limits, layers.Budget);
        if (unpacked.Result == Unpacked.Outcome.TooLarge)
            return [NoRide.TooLarge(name, work.Limits)];
        if (unpacked.Length == 0)
            return Refused(name, "damaged archive", "This gzip file is damaged from its beginning: copy it again from where it came.");
        var contents = work.Open(name, unpacked, layers with { Gzips = layers.Gzips + 1 });
        // A stream that is simply cut ends without complaint; the length at its end then disagrees.
        var isWhole = unpacked.Result == Unpacked.Outcome.Whole && LengthSaid(bytes) == unpacked.Length;
        return isWhole ? contents : [.. contents.Select(c => c.With(w => WithWarning(w, unpacked.Length)))];
    }

    /// <summary>The length that the end of the file gives for what it unpacks to (modulo 2³²); −1 where it is too short to give one.</summary>
    private static long LengthSaid(byte[] bytes) =>
        bytes.Length >= FewestBytes ? BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(bytes.Length - 4)) : -1;

    private static FileContent WithWarning(FileContent content, int bytes) => content.IsOfUse
        ? content with
        {
            Notices = [new FileNotice(content.File, "damaged archive", $"{bytes} unpacked bytes", $"The gzip file is cut or damaged: the {bytes} bytes that could be unpacked were read; copy it again from where it came.", false)],
        }
        : content;

    private static FileContent[] Refused(string name, string problem, string sentence) =>
        [RideEndings.Promise(name) ? FileContent.Unusable(name, problem, sentence) : FileContent.Nothing(name)];
}
