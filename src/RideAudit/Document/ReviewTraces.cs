using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>What the ride strips of a review draw, beside the document: it holds samples, and is in no JSON.</summary>
/// <param name="ByFile">A trace of each ride of the reviewed week, by the ride's file.</param>
public sealed record ReviewTraces(ImmutableDictionary<string, RideTrace> ByFile)
{
    /// <summary>No traces: strips are drawn without.</summary>
    public static ReviewTraces None { get; } = new(ImmutableDictionary<string, RideTrace>.Empty);

    /// <summary>A ride's trace; null without one.</summary>
    /// <param name="file">The ride's file.</param>
    public RideTrace? Of(string file) => ByFile.GetValueOrDefault(file);
}
