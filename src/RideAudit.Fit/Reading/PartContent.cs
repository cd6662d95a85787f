using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Reading;

/// <summary>What has been read of a part so far.</summary>
internal sealed class PartContent
{
    public FitFileId? FileId { get; set; }

    public List<FitSession> Sessions { get; } = [];

    public List<FitLap> Laps { get; } = [];

    public List<FitEvent> Events { get; } = [];

    public FitActivity? Activity { get; set; }

    public FitSport? Sport { get; set; }

    public List<FitZonesTarget> ZonesTargets { get; } = [];

    public FitWorkout? Workout { get; set; }

    public List<FitWorkoutStep> WorkoutSteps { get; } = [];

    public FitUserProfile? UserProfile { get; set; }

    public List<FitDeviceSettings> DeviceSettings { get; } = [];

    public List<FitTimestampCorrelation> Correlations { get; } = [];

    public RecordColumns Records { get; } = new();

    public HeartRateSeries HeartRate { get; } = new();

    public Dictionary<ushort, int> MessageCounts { get; } = [];

    public int Messages { get; set; }

    /// <summary>Place among the messages of the last record read; -1 if there is none.</summary>
    public int LastRecordOrder { get; set; } = -1;

    /// <summary>True if records came and an activity message closed them.</summary>
    public bool IsClosed => Activity is { } activity && Records.Count > 0 && activity.FileOrder > LastRecordOrder;

    /// <summary>Adds the uses of a definition to the counts, once, and starts it anew.</summary>
    public void CountUses(LocalDefinition? definition)
    {
        if (definition is null || definition.Count == 0)
            return;
        MessageCounts[definition.Global] = MessageCounts.GetValueOrDefault(definition.Global) + definition.Count;
        if (definition.Plan is { HasPower: true })
            Records.NoteDeclared(RecordColumn.Power, definition.Count);
        if (definition.Plan is { HasHeartRate: true })
            Records.NoteDeclared(RecordColumn.HeartRate, definition.Count);
        definition.Count = 0;
    }
}
