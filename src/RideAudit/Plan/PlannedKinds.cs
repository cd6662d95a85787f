using RideAudit.Units;

namespace RideAudit.Plan;

/// <summary>The words of planned kinds, and what ridden kind each asks for.</summary>
public static class PlannedKinds
{
    /// <summary>Every word as a plan table and a rider file write it.</summary>
    internal static IReadOnlyList<(string Word, PlannedKind Kind)> Words { get; } =
        [.. Enum.GetValues<PlannedKind>().Select(k => (WordOf(k), k))];

    /// <summary>The kinds that a ride can be planned as: all but rest and event.</summary>
    internal static IReadOnlyList<(string Word, PlannedKind Kind)> Rides { get; } =
        [.. Words.Where(w => w.Kind is not (PlannedKind.Rest or PlannedKind.Event))];

    /// <summary>The word of a kind.</summary>
    public static string WordOf(PlannedKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>A high or threshold session, or an event.</summary>
    public static bool IsHard(PlannedKind kind) => kind is PlannedKind.High or PlannedKind.Threshold or PlannedKind.Event;

    /// <summary>The kind that a ride ridden so is judged as; null for rest and for an event, which may be any.</summary>
    public static RideKind? RiddenAs(PlannedKind kind) => kind switch
    {
        PlannedKind.Recovery => RideKind.Recovery,
        PlannedKind.Endurance => RideKind.Endurance,
        PlannedKind.Long => RideKind.Long,
        PlannedKind.Threshold => RideKind.Threshold,
        PlannedKind.High => RideKind.High,
        _ => null,
    };
}
