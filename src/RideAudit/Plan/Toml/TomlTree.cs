using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>A TOML text as tables that remember where everything stands.</summary>
internal sealed class TomlTree
{
    private readonly List<RiderFileMistake> _mistakes;
    private readonly List<TomlTable> _tables;

    private TomlTree(List<RiderFileMistake> mistakes)
    {
        _mistakes = mistakes;
        _tables = [Root];
    }

    public TomlTable Root { get; } = new(new TomlPlace(1, 1));

    /// <summary>Lines that are not TOML; nothing else is said of them.</summary>
    public HashSet<int> BrokenLines { get; } = [];

    public static TomlTree Parse(string text, string name, List<RiderFileMistake> mistakes)
    {
        var tree = new TomlTree(mistakes);
        if (Syntax(text, name) is not { } document)
        {
            mistakes.Add(new RiderFileMistake(1, 1, "brackets within brackets without end", "values that are at most a table within a list", null));
            return tree;
        }
        foreach (var diagnostic in document.Diagnostics)
            tree.BrokenLines.Add(diagnostic.Span.Start.Line + 1);
        tree.AddItems(tree.Root, document.KeyValues);
        foreach (var table in document.Tables)
            tree.AddTable(table);
        tree.AddBroken(text, document.Diagnostics);
        return tree;
    }

    /// <summary>A text’s syntax, whatever is wrong with it; null when it is nested so deep that it cannot be read.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The file's name.</param>
    public static DocumentSyntax? Syntax(string text, string name)
    {
        // The parser throws where a text ends inside an escape, as a file does that is cut off or still being typed.
        var endsInEscape = text.LastIndexOf('\\') > text.LastIndexOf('\n');
        try
        {
            return SyntaxParser.Parse(endsInEscape ? text + "\n" : text, name, validate: false);
        }
        catch (TomlException)
        {
            return null;
        }
    }

    private void AddBroken(string text, IEnumerable<DiagnosticMessage> diagnostics)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        foreach (var place in diagnostics.Select(d => TomlPlace.Of(d)).Select(p => p with { Line = Math.Min(p.Line, lines.Length) }).DistinctBy(p => p.Line))
        {
            var line = TomlLine.Read(lines[place.Line - 1]);
            _mistakes.Add(new RiderFileMistake(place.Line, line.Column ?? place.Column, line.Found, line.Allowed, null));
            if (line.Key is { } key)
                _tables.Last(t => t == Root || t.Place.Line <= place.Line).BrokenKeys.Add(key);
        }
    }

    private void AddTable(TableSyntaxBase syntax)
    {
        if (syntax.Name is not { } name)
            return;
        var place = TomlPlace.Of(name);
        var keys = KeysOf(name);
        var parent = Root;
        foreach (var key in keys[..^1])
            parent = Enter(parent, key, place);
        var table = new TomlTable(place);
        _tables.Add(table);
        var isArray = syntax is TableArraySyntax;
        var last = keys[^1];
        if (parent[last] is not { } there)
            parent.Add(last, new TomlNode(place, null, [table], isArray));
        else if (isArray && there.IsArray)
            there.Tables.Add(table);
        else if (!isArray && there.IsImplied)
            (table, _) = (there.Tables[0], Reopen(parent, last, there, place));
        else
            AddTwice(string.Join('.', keys), place);
        AddItems(table, syntax.Items);
    }

    private static bool Reopen(TomlTable parent, string key, TomlNode there, TomlPlace place)
    {
        parent.Add(key, there with { KeyPlace = place, IsImplied = false });
        return true;
    }

    private void AddItems(TomlTable table, IEnumerable<KeyValueSyntax> items)
    {
        foreach (var item in items)
            AddItem(table, item);
    }

    private void AddItem(TomlTable table, KeyValueSyntax item)
    {
        if (item.Key is null || item.Value is not { } value || BrokenLines.Contains(TomlPlace.Of(item.Key).Line))
            return;
        var place = TomlPlace.Of(item.Key);
        var keys = KeysOf(item.Key);
        foreach (var key in keys[..^1])
            table = Enter(table, key, place);
        if (table[keys[^1]] is not null)
        {
            AddTwice(string.Join('.', keys), place);
            return;
        }
        if (value is not InlineTableSyntax inline)
        {
            table.Add(keys[^1], new TomlNode(place, value, [], false));
            return;
        }
        var inner = new TomlTable(place);
        table.Add(keys[^1], new TomlNode(place, null, [inner], false));
        foreach (var member in inline.Items)
        {
            if (member.KeyValue is { } pair)
                AddItem(inner, pair);
        }
    }

    private TomlTable Enter(TomlTable parent, string key, TomlPlace place)
    {
        if (parent[key] is { Tables.Count: > 0 } there)
            return there.Tables[^1];
        var table = new TomlTable(place);
        if (parent[key] is null)
            parent.Add(key, new TomlNode(place, null, [table], false, IsImplied: true));
        else
            AddTwice(key, place);
        return table;
    }

    private void AddTwice(string key, TomlPlace place) =>
        _mistakes.Add(new RiderFileMistake(place.Line, place.Column, $"{key} a second time", "each key and table once", null));

    private static List<string> KeysOf(KeySyntax key)
    {
        var keys = new List<string> { NameOf(key.Key) };
        foreach (var dotted in key.DotKeys)
            keys.Add(NameOf(dotted.Key));
        return keys;
    }

    private static string NameOf(BareKeyOrStringValueSyntax? key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };
}
