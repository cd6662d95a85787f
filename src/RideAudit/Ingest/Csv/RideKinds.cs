using RideAudit.Units;

namespace RideAudit.Ingest.Csv;

/// <summary>Reads the word that a rider or coach writes for what a ride was.</summary>
internal static class RideKinds
{
    private static readonly (string Word, RideKind Kind)[] Words =
    [
        ("recovery", RideKind.Recovery),
        ("endurance", RideKind.Endurance),
        ("long", RideKind.Long),
        ("threshold", RideKind.Threshold),
        ("high", RideKind.High),
        ("race", RideKind.High),
        ("test", RideKind.High),
    ];

    public static string Allowed { get; } = string.Join(", ", Words.Select(w => w.Word));

    /// <param name="text">The cell; capitals and blanks around it do not matter.</param>
    /// <returns>Null when it is none of the words.</returns>
    public static RideKind? Of(string text)
    {
        foreach (var (word, kind) in Words)
            if (text.Trim().Equals(word, StringComparison.OrdinalIgnoreCase))
                return kind;
        return null;
    }
}
