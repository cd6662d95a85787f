using RideAudit.Fit;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Ingest.Fit;

/// <summary>Turns a decoded FIT file into recordings: one a session, one a part where there is no session.</summary>
internal static class FitRideReader
{
    private static readonly FitDecodeOptions Settings = FitDecodeOptions.Default with
    {
        MaxRecords = ReadLimits.MostRows,
        Channels = FitChannels.Power | FitChannels.HeartRate | FitChannels.Cadence | FitChannels.Speed | FitChannels.Distance,
    };

    public static FileContent Read(string name, ReadOnlySpan<byte> bytes, IngestContext context)
    {
        using var file = Decoded(bytes);
        if (file.Rejection is { } rejection)
            return RideEndings.Promise(name)
                ? FileContent.Unusable(name, FitNotices.Problem(rejection), FitNotices.Sentence(rejection))
                : FileContent.Nothing(name);
        var recordings = new List<Recording>();
        var notices = new List<FileNotice>();
        FitClock? clock = null;
        foreach (var part in file.Parts.Where(p => p.Continues is null && IsActivity(p)))
        {
            if (FitClock.Of(part, name, context, clock) is not { } found)
            {
                notices.Add(FitNotices.NoDate(name));
                continue;
            }
            clock?.Dispose();
            clock = found;
            recordings.AddRange(new FitPartReader(name, part, found, context).Recordings());
        }
        clock?.Dispose();
        if (recordings.Count == 0)
            return new FileContent { File = name, Notices = [notices.FirstOrDefault() ?? FitNotices.NothingToUse(name, file)] };
        return new FileContent
        {
            File = name,
            Recordings = [.. recordings.Select((r, i) => i == 0 ? r : r with { File = $"{name}#{i + 1}" })],
            Notices = [.. FitNotices.Of(name, file, clock, recordings, partsWithoutDate: notices.Count)],
        };
    }

    private static FitFile Decoded(ReadOnlySpan<byte> bytes)
    {
        using var decoding = Phase.Begin("decoding");
        return FitDecoder.Decode(bytes, Settings);
    }

    /// <summary>A part whose kind is not told and that holds records is an activity too.</summary>
    private static bool IsActivity(FitPart part) =>
        part.IsActivity || (part.FileId is { } id && (byte)id.Type is 0 or byte.MaxValue && part.Records.Count > 0);
}
