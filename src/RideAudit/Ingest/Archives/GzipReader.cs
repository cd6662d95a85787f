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
        var unpacked = Unpack(bytes, work.Limits, layers.Budget);
        if (unpacked.Outcome == Unpacking.Outcome.TooLarge)
            return [NoRide.TooLarge(name, work.Limits)];
        if (unpacked.Bytes.Length == 0)
            return Refused(name, "damaged archive", "This gzip file is damaged from its beginning: copy it again from where it came.");
        var contents = work.Open(name, unpacked.Bytes, layers with { Gzips = layers.Gzips + 1 });
        return unpacked.Outcome == Unpacking.Outcome.Whole ? contents : [.. contents.Select(c => c.With(w => WithWarning(w, unpacked.Bytes.Length)))];
    }

    private static Unpacking.Result Unpack(byte[] bytes, ReadLimits limits, ArchiveLayers.UnpackBudget budget)
    {
        using var stream = new GZipStream(new MemoryStream(bytes, writable: false), CompressionMode.Decompress);
        var unpacked = Unpacking.Read(stream, 4L * bytes.Length, limits, budget);
        // A stream that is simply cut ends without complaint; the length at its end then disagrees.
        return unpacked.Outcome == Unpacking.Outcome.Whole && !LengthAgrees(bytes, unpacked.Bytes.Length)
            ? unpacked with { Outcome = Unpacking.Outcome.Damaged }
            : unpacked;
    }

    private static bool LengthAgrees(byte[] bytes, int unpacked) =>
        bytes.Length >= FewestBytes && BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(bytes.Length - 4)) == (uint)unpacked;

    private static FileContent WithWarning(FileContent content, int bytes) => content.IsOfUse
        ? content with
        {
            Notices = [new FileNotice(content.File, "damaged archive", $"{bytes} unpacked bytes", $"The gzip file is cut or damaged: the {bytes} bytes that could be unpacked were read; copy it again from where it came.", false)],
        }
        : content;

    private static FileContent[] Refused(string name, string problem, string sentence) =>
        [RideEndings.Promise(name) ? FileContent.Unusable(name, problem, sentence) : FileContent.Nothing(name)];
}
