using System.Collections.Immutable;

namespace RideAudit.Plan.Blocks;

/// <summary>A piece of a session: a stretch, or several repeated.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>Riding at one effort.</summary>
    /// <param name="Seconds">Its length, s; null: to the end of the day's time.</param>
    /// <param name="Effort">How hard.</param>
    public sealed record Stretch(int? Seconds, Effort Effort) : Block;

    /// <summary>The same again and again.</summary>
    /// <param name="Count">How often, 1 or more.</param>
    /// <param name="Inside">What is repeated, in order.</param>
    /// <param name="Between">What is ridden between two of them, not after the last; null for nothing.</param>
    public sealed record Repeat(int Count, ImmutableArray<Block> Inside, Stretch? Between) : Block;
}
