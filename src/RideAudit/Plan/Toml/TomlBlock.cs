namespace RideAudit.Plan.Toml;

/// <summary>A header with the keys under it; the keys before any header are the block without a name.</summary>
/// <param name="Name">The header's dotted name; empty for the first.</param>
/// <param name="IsArray">Written with double brackets.</param>
/// <param name="Header">The header from its line's first unit; an empty stretch at the text's beginning for the first block.</param>
/// <param name="Items">Its keys in order, those inside an inline table one by one.</param>
internal sealed record TomlBlock(string Name, bool IsArray, TomlSpot Header, List<TomlBlock.Item> Items)
{
    /// <summary>A key with its value.</summary>
    /// <param name="Path">The dotted name from the root, the block's name in front.</param>
    /// <param name="Whole">Key, equals sign and value.</param>
    /// <param name="Value">The value alone.</param>
    /// <param name="Brace">The inline table it is a member of; null for a line of its own.</param>
    internal sealed record Item(string Path, TomlSpot Whole, TomlSpot Value, TomlSpot? Brace);

    /// <summary>Where the block's own lines end: after its last key, or after its header.</summary>
    public int Tail => Items.Count == 0 ? Header.End : Items.Max(i => i.Whole.End);
}
