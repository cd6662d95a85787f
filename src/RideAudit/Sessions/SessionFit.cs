using System.Collections.Immutable;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>Gives a session the length of a day.</summary>
/// <remarks>Common practice, no source: a warm-up never shrinks below ten minutes, a cool-down never below five; what a session is written with less of, it keeps.</remarks>
internal static class SessionFit
{
    private const int ShortestWarmUp = 10 * 60;
    private const int ShortestCoolDown = 5 * 60;

    public static int LeastSeconds(ImmutableArray<Block> items)
    {
        var parts = Parts.Of(items);
        return parts.Fixed + parts.LeastWarmUp + parts.LeastCoolDown;
    }

    public static ImmutableArray<Block>? Fit(ImmutableArray<Block> items, int seconds)
    {
        var parts = Parts.Of(items);
        var spare = seconds - parts.Fixed;
        if (spare < parts.LeastWarmUp + parts.LeastCoolDown || seconds <= 0)
            return null;
        var warmUp = Math.Min(parts.WarmUp, spare - parts.LeastCoolDown);
        var coolDown = spare - warmUp;
        var middle = items[(parts.HasWarmUp ? 1 : 0)..^(parts.HasCoolDown ? 1 : 0)];
        var fitted = ImmutableArray.CreateBuilder<Block>();
        if (parts.HasWarmUp && warmUp > 0)
            fitted.Add(new Block.Stretch(warmUp, ((Block.Stretch)items[0]).Effort));
        fitted.AddRange(middle);
        if (coolDown > 0)
            fitted.Add(new Block.Stretch(coolDown, parts.HasCoolDown ? ((Block.Stretch)items[^1]).Effort : Effort.Easy));
        return fitted.ToImmutable();
    }

    public static int Length(Block block) => block switch
    {
        Block.Stretch stretch => stretch.Seconds ?? 0,
        Block.Repeat repeat => repeat.Count * repeat.Inside.Sum(Length) + (repeat.Count - 1) * (repeat.Between?.Seconds ?? 0),
        _ => 0,
    };

    /// <summary>What may stretch and what may not. The last stretch of a session without work is the riding itself, and stretches too.</summary>
    private readonly record struct Parts(bool HasWarmUp, bool HasCoolDown, int WarmUp, int LeastWarmUp, int LeastCoolDown, int Fixed)
    {
        public static Parts Of(ImmutableArray<Block> items)
        {
            var last = items[^1] as Block.Stretch;
            var hasCoolDown = last is not null && (last.Seconds is null || EffortShares.IsEasy(last.Effort));
            var hasWarmUp = items.Length > 1 && items[0] is Block.Stretch first && EffortShares.IsEasy(first.Effort);
            var warmUp = hasWarmUp ? ((Block.Stretch)items[0]).Seconds ?? 0 : 0;
            var leastCoolDown = hasCoolDown ? Math.Min(last!.Seconds ?? ShortestCoolDown, ShortestCoolDown) : 0;
            var kept = items.Sum(Length) - warmUp - (hasCoolDown ? last!.Seconds ?? 0 : 0);
            return new Parts(hasWarmUp, hasCoolDown, warmUp, Math.Min(warmUp, ShortestWarmUp), leastCoolDown, kept);
        }
    }
}
