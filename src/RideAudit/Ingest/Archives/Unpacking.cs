using System.Buffers;

namespace RideAudit.Ingest.Archives;

/// <summary>Unpacks a stream with a cap on the result; of a damaged one, what came before the damage.</summary>
internal static class Unpacking
{
    private const int ChunkBytes = 64 * 1024;
    private const int LargestPieceBytes = 1 << 20;

    /// <param name="packed">Gives the unpacked bytes; read to its end, its damage or the limit.</param>
    /// <param name="expected">Bytes expected, for the first array only; nothing is believed.</param>
    /// <param name="limits">The largest result, bytes.</param>
    /// <param name="budget">Told of every byte unpacked.</param>
    public static Unpacked Read(Stream packed, long expected, ReadLimits limits, ArchiveLayers.UnpackBudget budget)
    {
        // Pieces and not one growing array, which would be in memory twice whenever it grows.
        var pieces = new List<byte[]>();
        var piece = Array.Empty<byte>();
        var (length, filled) = (0, 0);
        try
        {
            while (true)
            {
                if (filled == piece.Length)
                {
                    // One byte more, so that the end is met without another piece.
                    piece = ArrayPool<byte>.Shared.Rent((int)Math.Clamp(expected - length + 1, ChunkBytes, LargestPieceBytes));
                    pieces.Add(piece);
                    filled = 0;
                }
                var read = packed.Read(piece, filled, piece.Length - filled);
                if (read == 0)
                    return Unpacked.Of(pieces, length, Unpacked.Outcome.Whole);
                budget.Spend(read);
                if (length > limits.LargestFileBytes - read || budget.IsSpent)
                    return Unpacked.TooLarge(pieces);
                (length, filled) = (length + read, filled + read);
                budget.Hold(length);
            }
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return Unpacked.Of(pieces, length, Unpacked.Outcome.Damaged);
        }
    }
}
