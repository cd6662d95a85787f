using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Units;

namespace RideAudit.Cli.Output;

/// <summary>One row a ride, for reading.</summary>
internal static class RideTable
{
    private const string Mark = "*";

    private static readonly IReadOnlyList<Column<RideEntry>> Columns =
    [
        new("date", r => Say.DayAndDate(r.StartsAt.Date)),
        new("start", r => Say.Time(r.StartsAt)) { Priority = 4 },
        new("kind", r => new Piece(Words.OrNull<RideKind>(r.Kind) ?? "–", r.IsHard ? Tone.Strong : Tone.Plain)),
        new("time", r => Say.Duration(r.DurationSeconds)) { Right = true },
        new("stress", r => Say.Number(r.Stress, 1)) { Right = true },
        new("norm. W", r => Say.Number(r.NormalisedPowerW)) { Right = true, Priority = 2 },
        new("ratio", r => Say.Number(r.IntensityRatio, 2)) { Right = true, Priority = 3 },
        new("low", r => LowShare(r.BandSeconds)) { Right = true, Priority = 1 },
        new("mid", r => Share(r.BandSeconds, r.BandSeconds.Middle)) { Right = true, Priority = 6 },
        new("high", r => Share(r.BandSeconds, r.BandSeconds.High)) { Right = true, Priority = 6 },
        new("mean W", r => Say.Number(r.MeanPowerW)) { Right = true, Priority = 9 },
        new("kJ", r => Say.Number(r.WorkKj)) { Right = true, Priority = 10 },
        new("bpm", r => Say.Number(r.MeanHeartRateBpm)) { Right = true, Priority = 5 },
        new("drift", r => r.HeartRateDriftPercent is { } d ? Say.Signed(d, 1) + " %" : "–") { Right = true, Priority = 11 },
        new("thresh. W", r => Say.Number(r.ThresholdPowerW)) { Right = true, Priority = 8 },
        new("power", r => Say.Percent(r.PowerCoverage)) { Right = true, Priority = 12 },
        new("sport", r => Words.Of(r.Sport)) { Priority = 7 },
        new("file", r => r.File) { Elastic = true },
    ];

    /// <summary>Writes the table, a mark at each ride that there is a notice about, and the notices below.</summary>
    public static void Write(Page page, IReadOnlyList<RideEntry> rides, IReadOnlyList<FileNotice> notices)
    {
        if (rides.Count == 0)
            return;
        if (notices.Count == 0)
        {
            TextTable.Write(page, Columns, rides);
            return;
        }
        TextTable.Write(page, [new(" ", r => notices.Any(n => RideNotices.IsAbout(n.File, r)) ? Mark : ""), .. Columns], rides);
        page.Blank();
        foreach (var notice in notices)
            page.Hanging(Mark + " ", $"{notice.File}: {notice.Sentence}", Tone.Quiet);
    }

    private static string LowShare(BandEntry bands) => Share(bands, bands.Low);

    private static string Share(BandEntry bands, double seconds)
    {
        var all = bands.Low + bands.Middle + bands.High;
        return all > 0 ? Say.Percent((double)seconds / all) : "–";
    }
}
