namespace RideAudit.Testing;

/// <summary>Counts work by the bytes that a thread allocates: the same on every machine, however busy it is.</summary>
public static class Work
{
    /// <summary>How many times as much is allocated for twice as much input; about 2 where the work grows in line with the input, 4 where with its square.</summary>
    /// <param name="make">Makes an input of a size.</param>
    /// <param name="read">Reads it.</param>
    /// <param name="size">What is made once, or kept for the next time, is made before anything is counted.</param>
    public static double GrowthOf(Func<int, byte[]> make, Action<byte[]> read, int size)
    {
        read(make(2 * size));
        return (double)Allocated(read, make(2 * size)) / Allocated(read, make(size));
    }

    private static long Allocated(Action<byte[]> read, byte[] input)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        read(input);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
