using System.Globalization;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Sessions;

/// <summary>A planned row as the ride it asks for, so that the rules can judge what nobody has ridden yet.</summary>
/// <remarks>
/// Where a row says what to ride, its blocks are ridden on paper, and their kind counts, whatever the row claims.
/// Where it says only a kind and a length, it is ridden as that kind usually is, and its own kind counts: common practice, no source.
/// </remarks>
public static class PaperRide
{
    /// <summary>An event of unknown length counts as so many minutes.</summary>
    public const int EventMinutes = 120;

    private const int LeastEasyMinutes = 10;

    /// <summary>The ride; null for rest.</summary>
    /// <param name="planned">The row.</param>
    /// <param name="book">The sessions that rows may name.</param>
    /// <param name="rider">For thresholds.</param>
    /// <param name="limits">The limits that kinds are read by.</param>
    public static RideFigures? Of(PlannedSession planned, SessionBook book, Rider rider, Limits limits)
    {
        if (planned.IsRest)
            return null;
        var file = $"planned {Shown.Iso(planned.Date)}";
        if (book.Figures(planned) is { } written)
            return written with { File = file, Stress = book.Stress(planned) };
        var minutes = planned.Minutes ?? EventMinutes;
        var usual = PlannedTrace.FiguresOf(Usual(planned.Kind, minutes), planned.Date, rider, limits);
        var kind = PlannedKinds.RiddenAs(planned.Kind) ?? RideKind.High;
        return usual with
        {
            File = file,
            Kind = kind,
            KindFrom = KindSource.Word,
            LongEnough = kind == RideKind.Long || usual.LongEnough,
            Stress = book.Stress(planned) ?? usual.Stress,
        };
    }

    private static FittedSession Usual(PlannedKind kind, int minutes)
    {
        var work = Math.Min(kind == PlannedKind.Threshold ? 40 : 24, Math.Max(1, minutes - 2 * LeastEasyMinutes));
        var text = kind switch
        {
            PlannedKind.Recovery => "very easy to the end",
            PlannedKind.Endurance or PlannedKind.Long => "62-68 % to the end",
            PlannedKind.Threshold => Around(minutes, work, "93-97"),
            _ => Around(minutes, work, "107-111"),
        };
        var blocks = SessionBlocks.Read(text, out _)!;
        return FittedSession.Fit(blocks, minutes) ?? FittedSession.Fit(SessionBlocks.Read("62-68 % to the end", out _)!, minutes)!;
    }

    private static string Around(int minutes, int work, string share) => minutes <= work
        ? $"{share} % to the end"
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, (minutes - work) / 2)} min easy, {work} min {share} %, easy to the end");
}
