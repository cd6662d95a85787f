using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Units;

namespace RideAudit.Cli.Output;

/// <summary>One row a ride, for reading.</summary>
internal static class RideTable
{
    private const string Mark = "*";

    private static readonly IReadOnlyList<Column<RideEntry>> Columns =
    [
        new("date", r => Shown.DayAndIso(r.StartsAt.Date)),
        new("start", r => Shown.Time(r.StartsAt.TimeOfDay)) { Priority = 4 },
        new("kind", r => new Piece(Words.OrNull<RideKind>(r.Kind) ?? Shown.Missing, r.IsHard ? Tone.Strong : Tone.Plain)),
        new("time", r => Shown.TableLength(r.DurationSeconds)) { Right = true },
        new("stress", r => Shown.Number(r.Stress, 1)) { Right = true },
        new("norm. W", r => Shown.Number(r.NormalisedPowerW)) { Right = true, Priority = 2 },
        new("ratio", r => Shown.Number(r.IntensityRatio, 2)) { Right = true, Priority = 3 },
        new("low", r => Shown.Share(r.BandSeconds.Split()?.Low)) { Right = true, Priority = 1 },
        new("mid", r => Shown.Share(r.BandSeconds.Split()?.Middle)) { Right = true, Priority = 6 },
        new("high", r => Shown.Share(r.BandSeconds.Split()?.High)) { Right = true, Priority = 6 },
        new("mean W", r => Shown.Number(r.MeanPowerW)) { Right = true, Priority = 9 },
        new("kJ", r => Shown.Number(r.WorkKj)) { Right = true, Priority = 10 },
        new("bpm", r => Shown.Number(r.MeanHeartRateBpm)) { Right = true, Priority = 5 },
        new("drift", r => r.HeartRateDriftPercent is { } d ? Shown.Signed(d) + Shown.Joint + "%" : Shown.Missing) { Right = true, Priority = 11 },
        new("thresh. W", r => Shown.Number(r.ThresholdPowerW)) { Right = true, Priority = 8 },
        new("power", r => Shown.Share(r.PowerCoverage)) { Right = true, Priority = 12 },
        new("sport", r => Words.Of(r.Sport)) { Priority = 7 },
        new("file", r => r.File) { Elastic = true },
    ];

    /// <summary>Writes the table, a mark at each ride that there is a notice about, and the notices below.</summary>
    public static void Write(Page page, IReadOnlyList<RideEntry> rides, IReadOnlyList<NoticeEntry> notices)
    {
        if (rides.Count == 0)
            return;
        if (notices.Count == 0)
        {
            TextTable.Write(page, Columns, rides);
            return;
        }
        TextTable.Write(page, [new(" ", r => notices.Any(n => n.IsAbout(r)) ? Mark : ""), .. Columns], rides);
        page.Blank();
        foreach (var notice in notices)
            page.Hanging(Mark + " ", $"{notice.File}: {notice.Sentence}", Tone.Quiet);
    }
}
