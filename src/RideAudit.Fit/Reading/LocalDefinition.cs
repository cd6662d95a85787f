using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>A definition while its messages are read.</summary>
internal sealed class LocalDefinition(ReadOnlySpan<byte> bytes, in DefinitionShape shape, bool widenRepeats)
    : MessageDefinition(bytes, shape, widenRepeats)
{
    /// <summary>How its records are read; null until one is read, or if it defines no record.</summary>
    public RecordPlan? Plan { get; set; }

    /// <summary>Data messages of it that were read and not counted yet.</summary>
    public int Count { get; set; }
}
