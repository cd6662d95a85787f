using RideAudit.Plan;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>What a ride planned by its kind and length alone is taken to be, where the rules need to know.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class UsualSession
{
    /// <summary>The library’s furthest hard session that the rider is up to and the length holds; an easy one as plain as it comes; else the kind ridden evenly.</summary>
    /// <param name="kind">The kind; not rest.</param>
    /// <param name="minutes">The length, min, 1 or more.</param>
    /// <param name="experience">The rider’s.</param>
    public static SessionBlocks Of(PlannedKind kind, int minutes, Experience experience)
    {
        var purpose = kind switch
        {
            PlannedKind.Recovery => SessionPurpose.Recovery,
            PlannedKind.Long => SessionPurpose.Long,
            PlannedKind.Threshold => SessionPurpose.SweetSpot,
            PlannedKind.High or PlannedKind.Event => SessionPurpose.LongIntervals,
            _ => SessionPurpose.Endurance,
        };
        var known = SessionLibrary.All.Where(s => s.Purpose == purpose && s.Experience <= experience && s.ShortestDay <= minutes);
        return (PlannedKinds.IsHard(kind) ? known.LastOrDefault() : known.FirstOrDefault())?.Blocks ?? Even(kind);
    }

    private static SessionBlocks Even(PlannedKind kind) => SessionBlocks.Read(
        kind switch
        {
            PlannedKind.Recovery => "very easy to the end",
            PlannedKind.Threshold => "88-92 % to the end",
            PlannedKind.High or PlannedKind.Event => "107-110 % to the end",
            _ => "63-69 % to the end",
        },
        out _)!;
}
