using System.Collections.Immutable;
using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Ingest.Csv;

namespace RideAudit.Ingest;

/// <summary>The moment of each record, after repairs: clocks that were never set, or set in mid-ride.</summary>
internal sealed class FitClock
{
    /// <summary>A jump of more than this inside one recording is a clock being set, not a pause, s.</summary>
    private const long JumpSeconds = 30L * 86_400;

    /// <summary>So few records after a jump at the very end are damage, not a clock being set.</summary>
    private const int FewRecords = 5;

    private const int FewStepsBack = 5;

    private readonly long?[] _seconds;
    private readonly long _shift;

    private FitClock(long?[] seconds, long shift, ImmutableArray<string> remarks)
    {
        _seconds = seconds;
        _shift = shift;
        Remarks = remarks;
    }

    public ImmutableArray<string> Remarks { get; }

    /// <summary>Unix seconds of a record; null for one without a usable time.</summary>
    public long? SecondOf(int record) => _seconds[record];

    /// <summary>Unix seconds of a time in a summary or event.</summary>
    public long Unix(uint fitSeconds) => FitTime.ToUnixSeconds(fitSeconds) + _shift;

    /// <summary>Repairs a part's clock.</summary>
    /// <returns>Null when the clock was never set and the file's name has no date.</returns>
    public static FitClock? Repair(FitPart part, string name, IngestContext context)
    {
        var times = part.Records.Timestamps;
        var seconds = new long?[times.Length];
        for (var i = 0; i < times.Length; i++)
            seconds[i] = times[i] == RecordChannels.NoTime ? null : FitTime.ToUnixSeconds(times[i]);
        var remarks = new List<string>();
        RepairJumps(seconds, remarks);
        CountStepsBack(seconds, remarks);
        if (!part.IsClockUnset || seconds.Any(s => s > FitTime.ToUnixSeconds(FitTime.FirstDate)))
            return new FitClock(seconds, 0, [.. remarks]);
        if (CsvTimes.FromName(name) is not { } local || seconds.FirstOrDefault(s => s is not null) is not { } first)
            return null;
        var shift = context.AtLocal(local).ToUnixTimeSeconds() - first;
        remarks.Add("The device’s clock was not set: the date comes from the file’s name.");
        return new FitClock([.. seconds.Select(s => s + shift)], shift, [.. remarks]);
    }

    /// <summary>Keeps the later clock: records before a jump are moved up to it. A handful of records after the last jump is dropped.</summary>
    private static void RepairJumps(long?[] seconds, List<string> remarks)
    {
        for (var i = seconds.Length - 1; i > 0; i--)
        {
            if (seconds[i] is not { } later || seconds[i - 1] is not { } earlier || Math.Abs(later - earlier) <= JumpSeconds)
                continue;
            if (seconds.Length - i <= FewRecords && i > FewRecords)
            {
                Array.Fill(seconds, null, i, seconds.Length - i);
                remarks.Add("Records with an impossible date at the end were left out.");
                continue;
            }
            for (var j = 0; j < i; j++)
                seconds[j] += later - earlier - 1;
            remarks.Add("The clock was set during the ride: the part before it was moved to the later clock.");
        }
    }

    private static void CountStepsBack(long?[] seconds, List<string> remarks)
    {
        var steps = 0;
        for (var i = 1; i < seconds.Length; i++)
            if (seconds[i] < seconds[i - 1])
                steps++;
        if (steps > FewStepsBack)
            remarks.Add($"The records step back in time {steps} times and were put in order.");
    }
}
