namespace RideAudit.Ingest.Archives;

/// <summary>Unpacks a stream with a cap on the result; of a damaged one, what came before the damage.</summary>
internal static class Unpacking
{
    private const int ChunkBytes = 64 * 1024;

    /// <param name="packed">A decompressing stream.</param>
    /// <param name="expected">Bytes expected, for the first allocation only; nothing is believed.</param>
    /// <param name="limits">The largest result.</param>
    /// <param name="budget">Told of every byte unpacked.</param>
    public static Unpacked Read(Stream packed, long expected, ReadLimits limits, UnpackBudget budget)
    {
        using var output = new MemoryStream((int)Math.Clamp(expected, 0, 16 << 20));
        var chunk = new byte[ChunkBytes];
        try
        {
            for (var read = packed.Read(chunk); read > 0; read = packed.Read(chunk))
            {
                budget.Spend(read);
                if (output.Length + read > limits.LargestFileBytes || budget.IsSpent)
                    return new Unpacked([], UnpackOutcome.TooLarge);
                output.Write(chunk, 0, read);
            }
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            return new Unpacked(output.ToArray(), UnpackOutcome.Damaged);
        }
        return new Unpacked(output.ToArray(), UnpackOutcome.Whole);
    }
}
