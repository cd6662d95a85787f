using System.Collections.Immutable;

namespace RideAudit.Plan.Blocks;

/// <summary>A session as its blocks, in order.</summary>
/// <param name="Items">At least one; only the last may go to the end of the day's time.</param>
public sealed record SessionBlocks(ImmutableArray<Block> Items)
{
    /// <summary>Reads a text of blocks.</summary>
    /// <param name="text">Such as <c>15 min easy, 4 x 6 min 100-106 %, 3 min easy between, easy to the end</c>.</param>
    /// <param name="mistakes">Everything that cannot be read; empty when the text is right.</param>
    /// <returns>Null when there are mistakes.</returns>
    public static SessionBlocks? Read(string text, out ImmutableArray<BlocksMistake> mistakes)
    {
        var reader = new BlocksReader(text);
        var items = reader.Read();
        mistakes = reader.Mistakes;
        return mistakes.IsEmpty ? new SessionBlocks(items) : null;
    }

    /// <summary>The same blocks written down, in the way that reads back as these.</summary>
    public override string ToString() => BlocksWriter.Write(Items);
}
