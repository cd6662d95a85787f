using System.Collections.Immutable;

namespace RideAudit.Rules;

/// <summary>A judged rule in words.</summary>
/// <param name="Sentence">One plain sentence with the numbers.</param>
/// <param name="WouldHaveKept">What would have kept it; null when it was kept.</param>
/// <param name="Occurrences">Where in the week.</param>
internal readonly record struct Account(string Sentence, string? WouldHaveKept, ImmutableArray<Occurrence> Occurrences)
{
    public static Account Of(string sentence) => new(sentence, null, []);

    public static Account Of(string sentence, string wouldHaveKept, params ReadOnlySpan<Occurrence> occurrences) =>
        new(sentence, wouldHaveKept, [.. occurrences]);
}
