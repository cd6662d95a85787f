namespace RideAudit.Cli.Work;

/// <summary>Finds the known word that a mistyped one was meant to be.</summary>
internal static class Nearest
{
    /// <summary>The nearest word, if it is near enough.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The known words.</param>
    /// <returns>Null when none is within a third of the typed word's length.</returns>
    public static string? Of(string typed, IEnumerable<string> known)
    {
        var best = known.Select(k => (Word: k, Distance: Distance(typed, k))).OrderBy(k => k.Distance).FirstOrDefault();
        return best.Word is not null && best.Distance <= Math.Max(1, typed.Length / 3) ? best.Word : null;
    }

    /// <summary>Insertions, deletions, replacements and swaps of neighbours between two words.</summary>
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
            for (var j = 1; j <= b.Length; j++)
            {
                d[i, j] = Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        return d[a.Length, b.Length];
    }
}
