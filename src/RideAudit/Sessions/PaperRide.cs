using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;

namespace RideAudit.Sessions;

/// <summary>A planned row as the ride it asks for, so that the rules can judge what nobody has ridden yet.</summary>
/// <remarks>
/// Where a row says what to ride, its blocks are ridden on paper, and their kind counts, whatever the row claims.
/// Where it says only a kind and a length, it is ridden as that kind usually is, and its own kind counts: common practice, no source.
/// </remarks>
internal static class PaperRide
{
    /// <summary>An event of unknown length counts as so many minutes.</summary>
    public const int EventMinutes = 120;

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
        var usual = PlannedTrace.FiguresOf(FittedSession.Fit(UsualSession.Of(planned.Kind, minutes, rider.Experience), minutes)!, planned.Date, rider, limits);
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
}
