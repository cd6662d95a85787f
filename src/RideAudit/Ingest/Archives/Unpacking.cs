namespace RideAudit.Ingest.Archives;

/// <summary>Unpacks a stream with a cap on the result; of a damaged one, what came before the damage.</summary>
internal static class Unpacking
{
    private const int ChunkBytes = 64 * 1024;
    private const int LargestPieceBytes = 1 << 20;

    /// <param name="packed">Gives the unpacked bytes; read to its end, its damage or the limit.</param>
    /// <param name="expected">Bytes expected, for the first allocation only; nothing is believed.</param>
    /// <param name="limits">The largest result, bytes.</param>
    /// <param name="budget">Told of every byte unpacked.</param>
    public static Result Read(Stream packed, long expected, ReadLimits limits, ArchiveLayers.UnpackBudget budget)
    {
        // Pieces and not one growing array, which would be in memory twice whenever it grows.
        var pieces = new List<byte[]>();
        long length = 0;
        try
        {
            while (true)
            {
                var piece = new byte[Math.Clamp(expected - length, ChunkBytes, LargestPieceBytes)];
                var read = packed.ReadAtLeast(piece, 1, throwOnEndOfStream: false);
                if (read == 0)
                    return new Result(Joined(pieces, length), Outcome.Whole);
                budget.Spend(read);
                length += read;
                if (length > limits.LargestFileBytes || budget.IsSpent)
                    return new Result([], Outcome.TooLarge);
                budget.Hold(length);
                pieces.Add(read == piece.Length ? piece : piece[..read]);
            }
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return new Result(Joined(pieces, length), Outcome.Damaged);
        }
    }

    private static byte[] Joined(List<byte[]> pieces, long length)
    {
        if (pieces.Count == 1)
            return pieces[0];
        var whole = new byte[length];
        var at = 0;
        foreach (var piece in pieces)
        {
            piece.CopyTo(whole, at);
            at += piece.Length;
        }
        return whole;
    }

    /// <summary>What unpacking gave.</summary>
    /// <param name="Bytes">The bytes; of a damaged stream those before the damage.</param>
    /// <param name="Outcome">Whole, damaged on the way, or larger than is read.</param>
    internal readonly record struct Result(byte[] Bytes, Outcome Outcome);

    /// <summary>How unpacking went.</summary>
    internal enum Outcome
    {
        Whole,
        Damaged,
        TooLarge,
    }
}
