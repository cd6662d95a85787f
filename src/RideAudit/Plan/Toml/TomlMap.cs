using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>Where every key of a TOML text stands, so that one can be changed and the rest left as it is.</summary>
internal static class TomlMap
{
    /// <summary>The blocks of a text in order, the keys before any header first.</summary>
    /// <param name="text">The text; lines that are not TOML are passed over.</param>
    public static List<TomlBlock> Of(string text)
    {
        var first = new TomlBlock("", false, new TomlSpot(0, 0), []);
        if (TomlTree.Syntax(text, "") is not { } document)
            return [first];
        AddItems(first, document.KeyValues);
        var blocks = new List<TomlBlock> { first };
        foreach (var table in document.Tables)
        {
            if (table.Name is not { } name)
                continue;
            var from = text.LastIndexOf('\n', Math.Max(0, name.Span.Start.Offset - 1)) + 1;
            var close = (SyntaxNode?)table.CloseBracket ?? name;
            var block = new TomlBlock(NameOf(name), table is TableArraySyntax, new TomlSpot(from, close.Span.End.Offset + 1), []);
            AddItems(block, table.Items);
            blocks.Add(block);
        }
        return blocks;
    }

    private static void AddItems(TomlBlock block, IEnumerable<KeyValueSyntax> items)
    {
        foreach (var item in items)
            AddItem(block, item, block.Name, brace: null);
    }

    private static void AddItem(TomlBlock block, KeyValueSyntax item, string prefix, TomlSpot? brace)
    {
        if (item.Key is not { } key || item.Value is not { } value)
            return;
        var path = prefix.Length == 0 ? NameOf(key) : $"{prefix}.{NameOf(key)}";
        var whole = new TomlSpot(key.Span.Start.Offset, value.Span.End.Offset + 1);
        block.Items.Add(new TomlBlock.Item(path, whole, SpotOf(value), brace));
        if (value is not InlineTableSyntax inline)
            return;
        foreach (var member in inline.Items)
        {
            if (member.KeyValue is { } pair)
                AddItem(block, pair, path, SpotOf(value));
        }
    }

    private static TomlSpot SpotOf(SyntaxNode node) => new(node.Span.Start.Offset, node.Span.End.Offset + 1);

    private static string NameOf(KeySyntax key) =>
        string.Join('.', key.DotKeys.Select(d => NameOf(d.Key)).Prepend(NameOf(key.Key)));

    private static string NameOf(BareKeyOrStringValueSyntax? key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };
}
