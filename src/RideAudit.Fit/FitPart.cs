using RideAudit.Fit.Messages;

namespace RideAudit.Fit;

/// <summary>One part of a file: a header, its messages and a CRC. All state of the protocol belongs to one part.</summary>
/// <remarks>Lists keep file order, and file order means nothing: summaries may precede the records they cover, events may all stand at the end. Order by time.</remarks>
public sealed class FitPart
{
    internal FitPart()
    {
    }

    /// <summary>Index of this part in <see cref="FitFile.Parts"/>.</summary>
    public required int Index { get; init; }

    /// <summary>Where the part begins, bytes from the start of the file.</summary>
    public required long ByteOffset { get; init; }

    /// <summary>Length of the part with header and CRC, bytes.</summary>
    public required long ByteLength { get; init; }

    /// <summary>Protocol version as the header writes it: major in the high four bits.</summary>
    public required byte ProtocolVersion { get; init; }

    /// <summary>Profile version as the header writes it; its scale changed over the years, so do not judge by it.</summary>
    public required ushort ProfileVersion { get; init; }

    /// <summary>The three facts about the part's integrity.</summary>
    public required FitIntegrity Integrity { get; init; }

    /// <summary>What kind of file this is and when it was made; null if absent, which is usual from the second part on.</summary>
    public FitFileId? FileId { get; init; }

    /// <summary>Session summaries, in file order. A multisport recording has one for each sport.</summary>
    public required IReadOnlyList<FitSession> Sessions { get; init; }

    /// <summary>Lap summaries, in file order.</summary>
    public required IReadOnlyList<FitLap> Laps { get; init; }

    /// <summary>Events, in file order.</summary>
    public required IReadOnlyList<FitEvent> Events { get; init; }

    /// <summary>The activity message, the last one if there are several; null if absent.</summary>
    public FitActivity? Activity { get; init; }

    /// <summary>The sport message, the last one if there are several; null if absent.</summary>
    public FitSport? Sport { get; init; }

    /// <summary>Threshold settings stored with the recording, in file order.</summary>
    public required IReadOnlyList<FitZonesTarget> ZonesTargets { get; init; }

    /// <summary>What a workout file holds, the last one if there are several; null if absent.</summary>
    public FitWorkout? Workout { get; init; }

    /// <summary>The steps of a workout, in file order; empty without any.</summary>
    public IReadOnlyList<FitWorkoutStep> WorkoutSteps { get; init; } = [];

    /// <summary>The rider's body data as the device knew them; null if absent. The name is never read.</summary>
    public FitUserProfile? UserProfile { get; init; }

    /// <summary>Clock settings of the device, in file order.</summary>
    public required IReadOnlyList<FitDeviceSettings> DeviceSettings { get; init; }

    /// <summary>Pairs of UTC, system and local time, in file order.</summary>
    public required IReadOnlyList<FitTimestampCorrelation> TimestampCorrelations { get; init; }

    /// <summary>The records, one array a channel.</summary>
    public required RecordChannels Records { get; init; }

    /// <summary>Heart rate from hr messages, expanded, with that of the parts which continue this one; empty if there are none.</summary>
    public required HeartRateSeries HeartRate { get; init; }

    /// <summary>Records whose missing heart rate was filled from <see cref="HeartRate"/>.</summary>
    public required int HeartRatesMerged { get; init; }

    /// <summary>Index of the part that this part only adds heart rate to; null if it stands alone.</summary>
    public int? Continues { get; init; }

    /// <summary>How often each global message number was read, known or not.</summary>
    public required IReadOnlyDictionary<ushort, int> MessageCounts { get; init; }

    /// <summary>Faults of this part alone; also in <see cref="FitFile.Faults"/>.</summary>
    public required IReadOnlyList<FitFault> Faults { get; init; }

    /// <summary>True if times are seconds since power-on: the device's clock was not set when the recording began.</summary>
    public required bool IsClockUnset { get; init; }

    /// <summary>True for an activity: its file_id says so, or there is no file_id and there are records.</summary>
    public bool IsActivity => FileId is { } id ? id.Type == FitFileType.Activity : Records.Count > 0;
}
