namespace RideAudit.Report.Pdf;

/// <summary>Short codes for frequent symbols, as RFC 1951 writes them.</summary>
/// <param name="size">Number of symbols.</param>
/// <param name="longest">Most bits a code may have.</param>
internal sealed class HuffmanCode(int size, int longest)
{
    private const int FewestSymbols = 257;

    // RFC 1951, 3.2.7: the order in which the lengths of the codes for lengths are written.
    private static readonly int[] Order = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];
    private readonly int[] _counts = new int[size];
    private readonly int[] _lengths = new int[size];
    private readonly int[] _codes = new int[size];

    /// <summary>Notes one use of a symbol.</summary>
    public void Count(int symbol) => _counts[symbol]++;

    /// <summary>Makes the codes from what was counted.</summary>
    public void Build()
    {
        int[] weights = [.. _counts];
        for (int used = weights.Count(weight => weight > 0), symbol = 0; used < 2; symbol++)
        {
            // One code alone would be of no bits: a decoder wants two.
            used += weights[symbol] == 0 ? 1 : 0;
            weights[symbol] = Math.Max(1, weights[symbol]);
        }

        while (!Measure(weights))
        {
            for (var i = 0; i < size; i++)
                weights[i] = (weights[i] + 1) / 2;
        }

        Number();
    }

    /// <summary>Writes a symbol's code.</summary>
    public void Write(Deflate.BitWriter bits, int symbol) => bits.Write(_codes[symbol], _lengths[symbol]);

    /// <summary>Writes the lengths of both codes, themselves coded.</summary>
    public static void WriteTables(Deflate.BitWriter bits, HuffmanCode symbols, HuffmanCode distances)
    {
        var literals = Math.Max(FewestSymbols, Array.FindLastIndex(symbols._lengths, length => length > 0) + 1);
        var far = Math.Max(1, Array.FindLastIndex(distances._lengths, length => length > 0) + 1);
        var runs = Runs([.. symbols._lengths[..literals], .. distances._lengths[..far]]);
        var tables = new HuffmanCode(Order.Length, 7);
        foreach ((var symbol, _, _) in runs)
            tables.Count(symbol);
        tables.Build();
        var last = Array.FindLastIndex(Order, symbol => tables._lengths[symbol] > 0) + 1;
        last = Math.Max(4, last);
        bits.Write(literals - FewestSymbols, 5);
        bits.Write(far - 1, 5);
        bits.Write(last - 4, 4);
        foreach (var symbol in Order.AsSpan(0, last))
            bits.Write(tables._lengths[symbol], 3);
        foreach ((var symbol, var extra, var width) in runs)
        {
            tables.Write(bits, symbol);
            bits.Write(extra, width);
        }
    }

    /// <summary>Lengths one by one, runs of zeros together: code 17 for 3 to 10, 18 for 11 to 138.</summary>
    private static List<(int Symbol, int Extra, int Bits)> Runs(int[] lengths)
    {
        var runs = new List<(int Symbol, int Extra, int Bits)>();
        for (var at = 0; at < lengths.Length;)
        {
            var zeros = 0;
            while (at + zeros < lengths.Length && lengths[at + zeros] == 0 && zeros < 138)
                zeros++;
            runs.Add(zeros > 10 ? (18, zeros - 11, 7) : zeros > 2 ? (17, zeros - 3, 3) : (lengths[at], 0, 0));
            at += zeros > 2 ? zeros : 1;
        }

        return runs;
    }

    /// <summary>Lengths of the codes for these weights; false when one is too long.</summary>
    private bool Measure(int[] weights)
    {
        Array.Clear(_lengths);
        var trees = new PriorityQueue<List<int>, (long Weight, int Order)>();
        for (var symbol = 0; symbol < size; symbol++)
        {
            if (weights[symbol] > 0)
                trees.Enqueue([symbol], (weights[symbol], symbol));
        }

        for (var order = size; trees.Count > 1; order++)
        {
            trees.TryDequeue(out var one, out var light);
            trees.TryDequeue(out var other, out var heavy);
            one!.AddRange(other!);
            foreach (var symbol in one)
                _lengths[symbol]++;
            trees.Enqueue(one, (light.Weight + heavy.Weight, order));
        }

        return _lengths.Max() <= longest;
    }

    private void Number()
    {
        var code = 0;
        for (var length = 1; length <= longest; length++, code <<= 1)
        {
            for (var symbol = 0; symbol < size; symbol++)
            {
                if (_lengths[symbol] == length)
                    _codes[symbol] = Reversed(code++, length);
            }
        }
    }

    private static int Reversed(int code, int length)
    {
        var reversed = 0;
        for (var i = 0; i < length; i++)
            reversed |= ((code >> i) & 1) << (length - 1 - i);
        return reversed;
    }
}
