namespace RideAudit.Cli.Tests.Docs;

/// <summary>Finds the command lines in README.md and docs/*.md: all of a <c>sh</c> block, those after <c>$ </c> in a <c>console</c> block.</summary>
internal static class DocPages
{
    public static IEnumerable<DocBlock> All() => Pages().SelectMany(Read);

    public static IEnumerable<string> Pages()
    {
        yield return "README.md";
        foreach (var page in Directory.EnumerateFiles(Repository.Path("docs"), "*.md").Order(StringComparer.Ordinal))
            yield return $"docs/{Path.GetFileName(page)}";
    }

    private static IEnumerable<DocBlock> Read(string page)
    {
        var lines = File.ReadAllLines(Repository.Path(page));
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
                continue;
            var language = lines[i][3..].Trim();
            var end = Array.FindIndex(lines, i + 1, l => l.StartsWith("```", StringComparison.Ordinal));
            foreach (var block in language switch
            {
                "console" => Transcripts(page, lines, i + 1, end),
                "sh" or "bash" => Script(page, lines, i + 1, end),
                _ => [],
            })
                yield return block;
            i = end;
        }
    }

    private static IEnumerable<DocBlock> Transcripts(string page, string[] lines, int from, int to)
    {
        // Elsewhere a block without output only says what to type.
        var shows = page == "docs/commands.md" || lines[from..to].Any(l => !l.StartsWith("$ ", StringComparison.Ordinal));
        for (var i = from; i < to; i++)
        {
            if (!lines[i].StartsWith("$ ", StringComparison.Ordinal))
                continue;
            var next = i + 1;
            while (next < to && !lines[next].StartsWith("$ ", StringComparison.Ordinal))
                next++;
            yield return new DocBlock(page, i, lines[i][2..], lines[(i + 1)..next], shows);
        }
    }

    private static IEnumerable<DocBlock> Script(string page, string[] lines, int from, int to)
    {
        for (var i = from; i < to; i++)
            if (lines[i].Trim() is { Length: > 0 } command && !command.StartsWith('#'))
                yield return new DocBlock(page, i, command, [], IsTranscript: false);
    }
}
