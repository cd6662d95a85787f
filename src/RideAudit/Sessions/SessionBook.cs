using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;

namespace RideAudit.Sessions;

/// <summary>The sessions a rider's plan may name: the coach's own first, then the library's; and what planned rows come to.</summary>
/// <param name="rider">The rider file.</param>
/// <param name="limits">The limits that kinds are read by.</param>
internal sealed class SessionBook(Rider rider, Limits limits)
{
    // Common practice, no source: ratios of intensity of a session that is not written out.
    private const double RecoveryRatio = 0.55;
    private const double EasyRatio = 0.65;
    private const double ThresholdRatio = 0.78;
    private const double HighRatio = 0.80;

    /// <summary>The blocks of a name; null when neither the coach nor the library has it.</summary>
    /// <param name="name">In any case of letters.</param>
    public SessionBlocks? Find(string name) =>
        rider.Sessions.FirstOrDefault(s => s.Session.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase))?.Blocks
        ?? SessionLibrary.Find(name)?.Blocks;

    /// <summary>A planned session fitted to its minutes; null where it names no blocks, has no minutes, or its work does not fit them.</summary>
    /// <param name="planned">The row.</param>
    public FittedSession? Fitted(PlannedSession planned) =>
        planned.Minutes is { } minutes && (planned.Blocks ?? (planned.Session is { } name ? Find(name) : null)) is { } blocks
            ? FittedSession.Fit(blocks, minutes)
            : null;

    /// <summary>The figures of a planned session, as of a ridden one; null where <see cref="Fitted"/> is.</summary>
    /// <param name="planned">The row.</param>
    public RideFigures? Figures(PlannedSession planned) =>
        Fitted(planned) is { } fitted ? PlannedTrace.FiguresOf(fitted, planned.Date, rider, limits) : null;

    /// <summary>Planned stress, points: the row's own, else that of its blocks, else from kind and minutes; null for an event of unknown length.</summary>
    /// <remarks>Without blocks a hard session is hard over an hour at most, what is longer is easy around it; an event counts as high.</remarks>
    /// <param name="planned">The row.</param>
    public double? Stress(PlannedSession planned) => planned switch
    {
        { Stress: { } stress } => stress,
        { IsRest: true } => 0,
        { Minutes: null } => null,
        _ => Figures(planned)?.Stress ?? StressOf(planned.Kind, planned.Minutes.Value),
    };

    /// <summary>A session of the coach's own whose blocks are judged as another kind than it claims; null where they agree.</summary>
    /// <param name="date">A date, for the thresholds in force.</param>
    public Units.RideKind? JudgedOtherwise(OwnSession session, LocalDate date)
    {
        if (FittedSession.Fit(session.Blocks, session.Minutes) is not { } fitted)
            return null;
        var kind = PlannedTrace.FiguresOf(fitted, date, rider, limits).Kind;
        return kind == PlannedKinds.RiddenAs(session.Kind) ? null : kind;
    }

    private static double StressOf(PlannedKind kind, int minutes)
    {
        var hours = minutes / 60.0;
        var hard = PlannedKinds.IsHard(kind) ? Math.Min(1, hours) : 0;
        var easy = kind == PlannedKind.Recovery ? RecoveryRatio : EasyRatio;
        var ratio = kind == PlannedKind.Threshold ? ThresholdRatio : HighRatio;
        return TrainingStress.Of(hard * 3600, ratio) + TrainingStress.Of((hours - hard) * 3600, easy);
    }
}
