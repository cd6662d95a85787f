using System.Collections.Immutable;
using RideAudit.Formatting;

namespace RideAudit.Held;

/// <summary>Planned repeats and ridden power in one sentence.</summary>
internal static class RepeatWords
{
    /// <summary>The sentence: <c>Planned 4 × 5 min at 270 to 280 W: 1) 281 W, 2) 279 W, 3) 276 W, 4) not ridden.</c> Null without repeats.</summary>
    public static string? Of(ImmutableArray<HeldRepeat> repeats)
    {
        if (repeats.IsEmpty)
            return null;
        var isOne = repeats.All(r => (r.Seconds, r.LowW, r.HighW) == (repeats[0].Seconds, repeats[0].LowW, repeats[0].HighW));
        var lead = isOne
            ? $"Planned {(repeats.Length > 1 ? $"{Shown.Number(repeats.Length)}{Shown.Joint}×{Shown.Joint}" : "")}{Meant(repeats[0])}"
            : "Planned repeats";
        return $"{lead}: {string.Join(", ", repeats.Select((r, i) => $"{(repeats.Length > 1 ? $"{Shown.Number(i + 1)}){Shown.Joint}" : "")}{(isOne ? Ridden(r) : $"{Meant(r)}, {Ridden(r)}")}"))}.";
    }

    private static string Meant(HeldRepeat repeat) => repeat is { LowW: { } low, HighW: { } high }
        ? $"{Length(repeat.Seconds)} at {Shown.Range(low, high, "W")}"
        : $"{Length(repeat.Seconds)} all out";

    private static string Ridden(HeldRepeat repeat) => repeat.RiddenW is { } watts ? Shown.Watts(watts) : "not ridden";

    private static string Length(int seconds) => seconds % 60 == 0 ? Shown.Length(seconds) : Shown.Quantity(seconds, "s");
}
