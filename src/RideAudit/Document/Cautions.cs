using System.Collections.Immutable;

namespace RideAudit.Document;

/// <summary>The cautions every reader sees.</summary>
public static class Cautions
{
    /// <summary>All of them, in order.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "These figures describe past rides; they diagnose nothing.",
        "Chest pain, fainting, unusual breathlessness, or fatigue that does not lift: stop, and see a doctor.",
        "New to hard training, pregnant, under 18, or with a heart, lung or metabolic condition: ask a doctor before following intensity targets.",
        "Thresholds are estimates.",
        "A coach’s or a clinician’s judgement of the person comes before any rule here.",
        "Rules drawn from studies of runners are marked.",
    ];
}
