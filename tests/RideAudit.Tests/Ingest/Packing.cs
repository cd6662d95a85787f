using System.IO.Compression;

namespace RideAudit.Tests.Ingest;

/// <summary>Packs bytes for tests.</summary>
internal static class Packing
{
    public static byte[] Gzip(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
            gzip.Write(bytes);
        return packed.ToArray();
    }

    public static byte[] Zip(params (string Name, byte[] Bytes)[] entries)
    {
        using var packed = new MemoryStream();
        using (var archive = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var (name, bytes) in entries)
            {
                using var stream = archive.CreateEntry(name, CompressionLevel.Fastest).Open();
                stream.Write(bytes);
            }
        return packed.ToArray();
    }

    /// <summary>The same archive with the encryption bit of every entry set, in the local headers and in the directory.</summary>
    public static byte[] Encrypted(byte[] zip)
    {
        var bytes = zip.ToArray();
        for (var i = 0; i + 4 < bytes.Length; i++)
            if (bytes[i] == 'P' && bytes[i + 1] == 'K' && (bytes[i + 2], bytes[i + 3]) is (3, 4) or (1, 2))
                bytes[i + (bytes[i + 2] == 3 ? 6 : 8)] |= 1;
        return bytes;
    }
}
