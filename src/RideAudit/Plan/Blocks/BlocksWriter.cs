using System.Collections.Immutable;
using System.Globalization;

namespace RideAudit.Plan.Blocks;

/// <summary>Writes blocks as the grammar reads them.</summary>
internal static class BlocksWriter
{
    public static string Write(ImmutableArray<Block> items) => string.Join(", ", items.Select(Write));

    public static string Write(Effort effort) => effort.Measure switch
    {
        EffortMeasure.Easy => "easy",
        EffortMeasure.VeryEasy => "very easy",
        EffortMeasure.AllOut => "all out",
        EffortMeasure.Feel => $"feel {Span(effort)}",
        EffortMeasure.HeartRateShare => $"{Span(effort)} % hr{Direction(effort)}",
        _ => $"{Span(effort)} %{Direction(effort)}",
    };

    public static string Duration(int seconds)
    {
        if (seconds % 3600 == 0)
            return $"{seconds / 3600} h";
        return seconds % 60 == 0 ? $"{seconds / 60} min" : $"{seconds} s";
    }

    private static string Write(Block block) => block switch
    {
        Block.Stretch { Seconds: { } seconds } stretch => $"{Duration(seconds)} {Write(stretch.Effort)}",
        Block.Stretch stretch => $"{Write(stretch.Effort)} to the end",
        Block.Repeat repeat => $"{repeat.Count} x {Inside(repeat)}{(repeat.Between is { } between ? $", {Write(between)} between" : "")}",
        _ => "",
    };

    private static string Inside(Block.Repeat repeat) =>
        repeat.Inside is [Block.Stretch only] ? Write(only) : $"({Write(repeat.Inside)})";

    private static string Span(Effort effort)
    {
        var (low, high) = (Math.Min(effort.From, effort.To), Math.Max(effort.From, effort.To));
        return low == high ? Number(low) : $"{Number(low)}-{Number(high)}";
    }

    private static string Direction(Effort effort) => !effort.Ramps ? "" : effort.From < effort.To ? " rising" : " falling";

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
