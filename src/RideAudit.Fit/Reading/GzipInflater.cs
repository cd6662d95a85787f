using System.IO.Compression;

namespace RideAudit.Fit.Reading;

/// <summary>Inflates gzip with a cap on the result; of a damaged stream what came before the damage.</summary>
internal static class GzipInflater
{
    private const int ChunkBytes = 64 * 1024;

    public static InflateOutcome Inflate(ReadOnlySpan<byte> bytes, int maxBytes, out byte[] inflated)
    {
        using MemoryStream input = new(bytes.ToArray(), writable: false);
        using GZipStream gzip = new(input, CompressionMode.Decompress);
        using MemoryStream output = new();
        InflateOutcome outcome = Copy(gzip, output, maxBytes);
        inflated = output.ToArray();
        return outcome;
    }

    private static InflateOutcome Copy(GZipStream gzip, MemoryStream output, int maxBytes)
    {
        byte[] chunk = new byte[ChunkBytes];
        try
        {
            for (int read = gzip.Read(chunk); read > 0; read = gzip.Read(chunk))
            {
                if (output.Length + read > maxBytes)
                    return InflateOutcome.TooLarge;
                output.Write(chunk, 0, read);
            }
        }
        catch (InvalidDataException)
        {
            return InflateOutcome.Damaged;
        }

        return InflateOutcome.Inflated;
    }
}
