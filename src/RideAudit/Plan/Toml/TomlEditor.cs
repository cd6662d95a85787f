using System.Text;

namespace RideAudit.Plan.Toml;

/// <summary>Changes single values of a TOML text and leaves every other character as it is.</summary>
internal sealed class TomlEditor(string text)
{
    private readonly string _lineEnd = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    /// <summary>The text with the changes made so far.</summary>
    public string Text { get; private set; } = text;

    /// <summary>Gives a key of the root or of a table written once a value, adding key and table where they are not there.</summary>
    /// <param name="table">The table's dotted name; empty for the root.</param>
    /// <param name="value">The value as TOML writes it.</param>
    public void Set(string table, string key, string value)
    {
        var blocks = TomlMap.Of(Text);
        var path = table.Length == 0 ? key : $"{table}.{key}";
        if (blocks.Where(b => !b.IsArray).SelectMany(b => b.Items).FirstOrDefault(i => i.Path == path) is { } there)
            Replace(there.Value, value);
        else if (blocks.Find(b => b.Name == table && !b.IsArray && (table.Length == 0 || b.Header.End > 0)) is { } block)
            InsertKey(block, blocks, key, value);
        else if (blocks.SelectMany(b => b.Items).FirstOrDefault(i => i.Path == table) is { } inline)
            InsertMember(inline, key, value);
        else if (blocks[0].Items.LastOrDefault(i => i.Brace is null && i.Path.StartsWith(table + ".", StringComparison.Ordinal)) is { } sibling)
            InsertLines(LineAfter(sibling.Whole.End), [$"{path} = {value}"]);
        else
            InsertBlock(AfterCommented($"[{table}]", blocks) ?? BeforeChildOf(table, blocks), [$"[{table}]", $"{key} = {value}"]);
    }

    /// <summary>Takes a key out of the root or of a table written once: its line stays as a comment.</summary>
    /// <returns>False when the key is not there.</returns>
    public bool TakeOut(string table, string key)
    {
        var path = table.Length == 0 ? key : $"{table}.{key}";
        var blocks = TomlMap.Of(Text).Where(b => !b.IsArray).ToList();
        var block = blocks.Find(b => b.Items.Exists(i => i.Path == path));
        if (block is null)
            return false;
        TakeOut(block, block.Items.Find(i => i.Path == path)!);
        return true;
    }

    /// <summary>The entries of an array of tables.</summary>
    public List<TomlBlock> Entries(string name) => TomlMap.Of(Text).FindAll(b => b.IsArray && b.Name == name);

    /// <summary>One entry of an array of tables, its header first.</summary>
    public string EntryText(TomlBlock entry) => Text[entry.Header.Start..entry.Tail];

    /// <summary>Gives a key of one entry of an array of tables a value.</summary>
    public void SetIn(string name, int index, string key, string value)
    {
        var entry = Entries(name)[index];
        if (entry.Items.Find(i => i.Path == $"{name}.{key}") is { } there)
            Replace(there.Value, value);
        else
            InsertKey(entry, TomlMap.Of(Text), key, value);
    }

    /// <summary>Takes a key out of one entry of an array of tables.</summary>
    public void TakeOutOf(string name, int index, string key)
    {
        var entry = Entries(name)[index];
        if (entry.Items.Find(i => i.Path == $"{name}.{key}") is { } there)
            TakeOut(entry, there);
    }

    /// <summary>Adds an entry to an array of tables.</summary>
    /// <param name="name">The array's name.</param>
    /// <param name="index">Its place among the entries.</param>
    /// <param name="lines">Its lines below the header.</param>
    public void AddEntry(string name, int index, IEnumerable<string> lines)
    {
        var blocks = TomlMap.Of(Text);
        var entries = Entries(name);
        var at = entries.Count == 0 ? AfterCommented($"[[{name}]]", blocks) ?? Text.Length
            : index == 0 ? StartWithComments(entries[0].Header.Start)
            : LineAfter(entries[index - 1].Tail);
        InsertBlock(at, [$"[[{name}]]", .. lines]);
    }

    /// <summary>Takes an entry of an array of tables out; comments on lines of their own stay.</summary>
    public void RemoveEntry(string name, int index)
    {
        var entry = Entries(name)[index];
        foreach (var spot in entry.Items.Where(i => i.Brace is null).Select(i => i.Whole).Prepend(entry.Header).Reverse())
            RemoveLines(spot);
    }

    private void TakeOut(TomlBlock block, TomlBlock.Item item)
    {
        if (item.Brace is not null)
        {
            RemoveMember(block, item);
            return;
        }
        var start = LineStart(item.Whole.Start);
        var key = item.Path[(item.Path.LastIndexOf('.') + 1)..];
        var commented = start > 0 && IsExampleOf(key, LineAt(LineStart(start - 1)));
        var plain = !Text[item.Whole.End..LineAfter(item.Whole.End)].Contains('#', StringComparison.Ordinal);
        // An example of the key stands above: a second one would say nothing more.
        if (commented && plain)
            RemoveLines(item.Whole);
        else
            CommentOut(start, item.Whole.End);
    }

    private void CommentOut(int start, int end)
    {
        var lines = Text[start..end].Split('\n');
        Text = string.Concat(Text.AsSpan(0, start), string.Join('\n', lines.Select(l => "# " + l)), Text.AsSpan(end));
    }

    private void RemoveMember(TomlBlock block, TomlBlock.Item item)
    {
        var members = block.Items.FindAll(i => i.Brace == item.Brace);
        var at = members.IndexOf(item);
        var from = at + 1 < members.Count ? item.Whole.Start : at > 0 ? members[at - 1].Whole.End : item.Whole.Start;
        var to = at + 1 < members.Count ? members[at + 1].Whole.Start : item.Whole.End;
        Text = Text.Remove(from, to - from);
    }

    private void RemoveLines(TomlSpot spot)
    {
        var start = LineStart(spot.Start);
        Text = Text.Remove(start, LineAfter(spot.End) - start);
    }

    private void Replace(TomlSpot spot, string value) =>
        Text = string.Concat(Text.AsSpan(0, spot.Start), value, Text.AsSpan(spot.End));

    private void InsertKey(TomlBlock block, List<TomlBlock> blocks, string key, string value)
    {
        var from = block.Header.End == 0 ? 0 : LineAfter(block.Header.End);
        var end = blocks.Find(b => b.Header.Start >= from && b.Header.End > 0)?.Header.Start ?? Text.Length;
        var own = block.Tail == 0 ? 0 : LineAfter(block.Tail);
        InsertLines(AfterExample(key, from, end) ?? own, [$"{key} = {value}"]);
    }

    private void InsertMember(TomlBlock.Item inline, string key, string value)
    {
        var inside = Text[(inline.Value.Start + 1)..(inline.Value.End - 1)].Trim();
        Text = Text.Insert(inline.Value.Start + 1, inside.Length == 0 ? $" {key} = {value} " : $" {key} = {value},");
    }

    // A block is set off by an empty line, above and below.
    private void InsertBlock(int at, IReadOnlyList<string> lines)
    {
        var before = Text[..at];
        var after = Text[at..];
        var open = before.Length == 0 || EndsInEmptyLine(before);
        var shut = after.Length == 0 || after.StartsWith('\n') || after.StartsWith("\r\n", StringComparison.Ordinal);
        InsertLines(at, [.. open ? [] : new[] { "" }, .. lines, .. shut ? [] : new[] { "" }]);
    }

    private void InsertLines(int at, IEnumerable<string> lines)
    {
        var added = new StringBuilder();
        if (at > 0 && Text[at - 1] != '\n')
            added.Append(_lineEnd);
        foreach (var line in lines)
            added.Append(line).Append(_lineEnd);
        Text = Text.Insert(at, added.ToString());
    }

    // A header that stands as a comment shows where its block belongs, unless keys of another block follow it.
    private int? AfterCommented(string header, List<TomlBlock> blocks)
    {
        var at = 0;
        while (at < Text.Length && CommentOf(LineAt(at)) != header)
            at = LineAfter(at);
        if (at >= Text.Length)
            return null;
        while (at < Text.Length && CommentOf(LineAt(at)) is not null)
            at = LineAfter(at);
        return blocks.SelectMany(b => b.Items).Where(i => i.Whole.Start >= at)
            .All(i => blocks.Exists(b => b.Header.Start >= at && b.Header.Start < i.Whole.Start)) ? at : null;
    }

    private int BeforeChildOf(string table, List<TomlBlock> blocks) =>
        blocks.Find(b => b.Name.StartsWith(table + ".", StringComparison.Ordinal)) is { } child ? StartWithComments(child.Header.Start) : Text.Length;

    /// <summary>The line after a key that stands as a comment; null without one.</summary>
    private int? AfterExample(string key, int from, int end)
    {
        for (var at = from; at < end && CommentOf(LineAt(at))?.StartsWith('[') != true; at = LineAfter(at))
        {
            if (IsExampleOf(key, LineAt(at)))
                return LineAfter(at);
        }
        return null;
    }

    private int StartWithComments(int lineStart)
    {
        while (lineStart > 0 && CommentOf(LineAt(LineStart(lineStart - 1))) is not null)
            lineStart = LineStart(lineStart - 1);
        return lineStart;
    }

    private int LineStart(int offset) => offset == 0 ? 0 : Text.LastIndexOf('\n', offset - 1) + 1;

    private int LineAfter(int offset)
    {
        var end = offset < Text.Length ? Text.IndexOf('\n', offset) : -1;
        return end < 0 ? Text.Length : end + 1;
    }

    private static bool EndsInEmptyLine(string text) =>
        text.EndsWith("\n\n", StringComparison.Ordinal) || text.EndsWith("\n\r\n", StringComparison.Ordinal) || text is "\n" or "\r\n";

    private string LineAt(int start) => Text[start..LineAfter(start)];

    private static string? CommentOf(string line) => line.Trim() is ['#', .. var comment] ? comment.Trim() : null;

    private static bool IsExampleOf(string key, string line) =>
        CommentOf(line) is { } comment && comment.StartsWith(key, StringComparison.Ordinal) && comment[key.Length..].TrimStart().StartsWith('=');
}
