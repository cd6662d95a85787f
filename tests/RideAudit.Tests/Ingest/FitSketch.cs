using RideAudit.Fit;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Writing;

namespace RideAudit.Tests.Ingest;

/// <summary>A FIT activity to be written: an ordinary ride but for what a test changes.</summary>
internal sealed record FitSketch
{
    /// <summary>2026-05-05T17:00:00Z, 18:00 in Lisbon.</summary>
    public static uint Evening { get; } = FitTime.FromUnixSeconds(1_778_000_400);

    public uint Start { get; init; } = Evening;

    public int Seconds { get; init; } = 120;

    public Func<int, int?> Power { get; init; } = _ => 200;

    public Func<int, int?> DeveloperPower { get; init; } = _ => null;

    public bool HasDeveloperPower { get; init; }

    public Func<int, int?> HeartRate { get; init; } = _ => 140;

    /// <summary>Distance of a second, m, as the device counts it.</summary>
    public Func<int, double?> Distance { get; init; } = _ => null;

    /// <summary>Time of the record of a second; null leaves the record out.</summary>
    public Func<int, uint?>? TimeOf { get; init; }

    public byte? Sport { get; init; } = 2;

    public byte? SubSport { get; init; } = 7;

    /// <summary>Timer events at seconds from the start: type 0 starts, 1, 4, 8 and 9 stop.</summary>
    public IReadOnlyList<(int At, byte Type)>? Timer { get; init; }

    public bool EventsLast { get; init; }

    public bool SummaryFirst { get; init; }

    public bool HasSession { get; init; } = true;

    public bool HasActivity { get; init; } = true;

    public Func<FitSession, FitSession> Session { get; init; } = s => s;

    /// <summary>The sessions of a multisport recording instead of one, each with its first second and length.</summary>
    public IReadOnlyList<(byte Sport, int From, int Seconds)>? Sessions { get; init; }

    /// <summary>Local minus universal time in the closing message, s; null leaves the local time out.</summary>
    public long? OffsetSeconds { get; init; } = 3600;

    public FitFileType Type { get; init; } = FitFileType.Activity;

    public Action<FitWriter> Before { get; init; } = _ => { };

    public byte[] Bytes()
    {
        var writer = new FitWriter();
        writer.WriteFileId(new FitFileId(Type, 255, 0, Start));
        Before(writer);
        if (SummaryFirst)
            WriteSummary(writer);
        if (!EventsLast)
            WriteEvents(writer, e => e.At <= 0);
        if (HasDeveloperPower)
            writer.WriteDeveloperPower();
        for (var i = 0; i < Seconds; i++)
            if ((TimeOf is null ? Start + (uint)i : TimeOf(i)) is { } time)
                writer.WriteRecord(new FitRecord(time, Power(i), HeartRate(i), DistanceM: Distance(i), DeveloperPower: HasDeveloperPower ? DeveloperPower(i) : null));
        WriteEvents(writer, e => EventsLast || e.At > 0);
        if (!SummaryFirst)
            WriteSummary(writer);
        return writer.Finish();
    }

    private void WriteEvents(FitWriter writer, Func<(int At, byte Type), bool> now)
    {
        var timer = Timer ?? [(0, 0), (Seconds, 4)];
        foreach (var (at, type) in timer.Where(now))
            writer.WriteEvent(new FitEvent((uint)(Start + at), FitEvent.Timer, type));
    }

    private void WriteSummary(FitWriter writer)
    {
        var end = Start + (uint)Seconds;
        if (HasSession)
            foreach (var (sport, from, seconds) in Sessions ?? [(Sport ?? 255, 0, Seconds)])
                writer.WriteSession(Session(new FitSession
                {
                    Timestamp = end,
                    StartTime = Start + (uint)from,
                    Sport = sport == 255 ? null : sport,
                    SubSport = sport == 2 ? SubSport : null,
                    TotalElapsedSeconds = seconds,
                    TotalTimerSeconds = seconds,
                }));
        if (HasActivity)
            writer.WriteActivity(new FitActivity(end, (uint?)(end + OffsetSeconds), Seconds, 1));
    }
}
