using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Reading;

/// <summary>Times that are taken for sense where a stream is searched.</summary>
internal readonly record struct TimeWindow(uint Low, uint High)
{
    private const uint SecondsBefore = 3_600;
    private const uint SecondsAfter = 86_400;

    public static TimeWindow Any => new(0, uint.MaxValue);

    public static TimeWindow Around(uint time) => new(
        time > SecondsBefore ? time - SecondsBefore : 0,
        time < uint.MaxValue - SecondsAfter - 1 ? time + SecondsAfter : uint.MaxValue - 1);

    /// <summary>The window around the last sound time of some records; any time if there is none.</summary>
    public static TimeWindow AroundLastOf(RecordColumns records) =>
        DoubtfulTail.LastSoundTime(records) is { } time ? Around(time) : Any;

    public bool Holds(uint time) => time >= Low && time <= High;
}
