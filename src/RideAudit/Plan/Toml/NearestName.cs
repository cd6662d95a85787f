namespace RideAudit.Plan.Toml;

/// <summary>Finds the known name that a misspelt one is nearest to.</summary>
internal static class NearestName
{
    /// <summary>The nearest known name; null when none is near enough to be meant.</summary>
    /// <param name="written">What stands in the file.</param>
    /// <param name="known">The names that there are.</param>
    public static string? Of(string written, IEnumerable<string> known)
    {
        var spelt = Plain(written);
        string? nearest = null;
        var fewest = int.MaxValue;
        foreach (var name in known)
        {
            var steps = Steps(spelt, Plain(name));
            if (steps < fewest)
                (nearest, fewest) = (name, steps);
        }
        return fewest <= Math.Max(2, spelt.Length / 3) ? nearest : null;
    }

    private static string Plain(string name) => name.Trim().Replace('-', '_').Replace(' ', '_').ToLowerInvariant();

    /// <summary>Single-letter insertions, deletions, replacements and swaps of neighbours between two words.</summary>
    private static int Steps(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(replaced, 1 + Math.Min(rows[i - 1, j], rows[i, j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    rows[i, j] = Math.Min(rows[i, j], 1 + rows[i - 2, j - 2]);
            }
        }
        return rows[a.Length, b.Length];
    }
}
