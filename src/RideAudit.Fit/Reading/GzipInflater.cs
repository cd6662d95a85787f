using System.IO.Compression;

namespace RideAudit.Fit.Reading;

/// <summary>Inflates gzip with a cap on the result; of a damaged stream what came before the damage.</summary>
internal static class GzipInflater
{
    private const int ChunkBytes = 64 * 1024;

    public static Outcome Inflate(ReadOnlySpan<byte> bytes, int maxBytes, out byte[] inflated)
    {
        using MemoryStream input = new(bytes.ToArray(), writable: false);
        using GZipStream gzip = new(input, CompressionMode.Decompress);
        using MemoryStream output = new();
        var outcome = Copy(gzip, output, maxBytes);
        inflated = output.ToArray();
        return outcome;
    }

    private static Outcome Copy(GZipStream gzip, MemoryStream output, int maxBytes)
    {
        var chunk = new byte[ChunkBytes];
        try
        {
            for (var read = gzip.Read(chunk); read > 0; read = gzip.Read(chunk))
            {
                if (output.Length + read > maxBytes)
                    return Outcome.TooLarge;
                output.Write(chunk, 0, read);
            }
        }
        catch (InvalidDataException)
        {
            return Outcome.Damaged;
        }

        return Outcome.Inflated;
    }

    /// <summary>What came of inflating.</summary>
    internal enum Outcome
    {
        Inflated,
        Damaged,
        TooLarge,
    }
}
