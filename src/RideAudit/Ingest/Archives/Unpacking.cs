namespace RideAudit.Ingest.Archives;

/// <summary>Unpacks a stream with a cap on the result; of a damaged one, what came before the damage.</summary>
internal static class Unpacking
{
    private const int ChunkBytes = 64 * 1024;

    /// <param name="packed">Gives the unpacked bytes; read to its end, its damage or the limit.</param>
    /// <param name="expected">Bytes expected, for the first allocation only; nothing is believed.</param>
    /// <param name="limits">The largest result, bytes.</param>
    /// <param name="budget">Told of every byte unpacked.</param>
    public static Result Read(Stream packed, long expected, ReadLimits limits, ArchiveLayers.UnpackBudget budget)
    {
        using var output = new MemoryStream((int)Math.Clamp(expected, 0, 16 << 20));
        var chunk = new byte[ChunkBytes];
        try
        {
            for (var read = packed.Read(chunk); read > 0; read = packed.Read(chunk))
            {
                budget.Spend(read);
                if (output.Length + read > limits.LargestFileBytes || budget.IsSpent)
                    return new Result([], Outcome.TooLarge);
                output.Write(chunk, 0, read);
            }
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return new Result(output.ToArray(), Outcome.Damaged);
        }
        return new Result(output.ToArray(), Outcome.Whole);
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
