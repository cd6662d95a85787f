using RideAudit.Fit.Messages;

namespace RideAudit.Fit.Reading;

/// <summary>Makes finished parts, and gives heart rate sent in parts of its own to the activity before them.</summary>
internal static class PartAssembly
{
    public static IReadOnlyList<FitPart> Assemble(List<PartDraft> drafts)
    {
        var continues = new int?[drafts.Count];
        int? activity = null;
        for (var i = 0; i < drafts.Count; i++)
        {
            if (drafts[i].HasRecords)
                activity = i;
            else if (drafts[i].IsHeartRateOnly && activity is { } before)
            {
                continues[i] = before;
                drafts[before].Content.HeartRate.Append(drafts[i].Content.HeartRate);
                drafts[i].Content.HeartRate.Clear();
            }
        }

        return [.. drafts.Select((draft, i) => Finish(draft, i, continues[i]))];
    }

    private static FitPart Finish(PartDraft draft, int index, int? continues)
    {
        var content = draft.Content;
        return new FitPart
        {
            Index = index,
            ByteOffset = draft.Offset,
            ByteLength = draft.Length,
            ProtocolVersion = draft.Header.ProtocolVersion,
            ProfileVersion = draft.Header.ProfileVersion,
            Integrity = new FitIntegrity(draft.Crc, draft.EndedAtDataEnd, content.Sessions.Count > 0, content.Activity is not null),
            FileId = content.FileId,
            Sessions = content.Sessions,
            Laps = content.Laps,
            Events = content.Events,
            Activity = content.Activity,
            Sport = content.Sport,
            ZonesTargets = content.ZonesTargets,
            Workout = content.Workout,
            WorkoutSteps = content.WorkoutSteps,
            UserProfile = content.UserProfile,
            DeviceSettings = content.DeviceSettings,
            TimestampCorrelations = content.Correlations,
            HeartRatesMerged = HeartRateMerger.Merge(content.HeartRate, content.Records),
            Records = new RecordChannels(content.Records),
            HeartRate = content.HeartRate,
            Continues = continues,
            MessageCounts = content.MessageCounts,
            Faults = draft.Faults,
            IsClockUnset = PartJudgement.IsClockUnset(content),
        };
    }
}
