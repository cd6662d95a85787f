using RideAudit.Formatting;
using RideAudit.Ingest.Text;
using RideAudit.Plan.Table;

namespace RideAudit.Ingest.Csv;

/// <summary>Takes plan tables out from among the CSV files, before anything could take one for a log of ridden rides.</summary>
internal static class PlanTables
{
    /// <summary>What a row that cannot be used is called among the notices.</summary>
    public const string Unreadable = "unreadable plan row";

    // A header that is longer than this is none that anybody wrote.
    private const int LongestHeader = 4096;
    private const int MostTold = 30;

    /// <summary>The plan table of a file; null when it is none.</summary>
    public static FileContent? Read(string name, byte[] bytes)
    {
        if (bytes.Length > RiderTexts.LargestBytes || !PlanTableReader.IsPlan(HeaderOf(bytes)))
            return null;
        return new FileContent { File = name, Plan = PlanTableReader.Read(TextBytes.Reader(bytes).ReadToEnd(), name) with { ByteOrderMark = !TextBytes.IsPlainUtf8(bytes) } };
    }

    /// <summary>What is wrong with the tables, a notice a row, each with line and column.</summary>
    public static IEnumerable<FileNotice> Notices(PlanTable table, IEnumerable<PlanSheet> sheets)
    {
        var empty = sheets.Where(s => s.Rows.All(r => r.Session is null)).Select(s => s.Name).ToHashSet();
        foreach (var file in table.Mistakes.GroupBy(m => m.File))
        {
            foreach (var mistake in file.Take(MostTold))
                yield return new FileNotice(mistake.File, Unreadable, null, Sentence(mistake), empty.Contains(mistake.File));
            if (file.Count() > MostTold)
                yield return new FileNotice(file.Key, Unreadable, null, $"{Shown.Capital(Shown.Count(file.Count() - MostTold, "more mistake"))} in this plan table.", false);
        }
    }

    private static string Sentence(PlanMistake mistake)
    {
        var nearest = mistake.Nearest is { } word ? $" Nearest: {word}." : "";
        var place = mistake.Column.Length > 0 ? $"Line {mistake.Line}, column {mistake.Column}" : $"Line {mistake.Line}";
        return $"{place} of the plan table: {ShownName.Of(mistake.Found)}; allowed: {mistake.Allowed}.{nearest}";
    }

    private static string HeaderOf(byte[] bytes)
    {
        var reader = TextBytes.Reader(bytes);
        Span<char> head = stackalloc char[LongestHeader];
        var read = reader.ReadBlock(head);
        var end = head[..read].IndexOfAny('\r', '\n');
        return new string(end >= 0 ? head[..end] : head[..read]);
    }
}
