namespace RideAudit.Rules;

/// <summary>A rule's place among the others, where there is not room for all.</summary>
public sealed record Standing
{
    /// <summary>Before everything that was missed, and after everything that guards the rider.</summary>
    internal const int FirstOfWhatWasMissed = 55;

    /// <summary>Smaller is named first: coming back, rest and spacing before what was missed.</summary>
    public int Rank { get; init; }

    /// <summary>The rules that say much the same.</summary>
    public RuleGroup Group { get; init; }

    /// <summary>It guards against too much too close together, rather than shaping the week.</summary>
    public bool Protects { get; init; }

    /// <summary>The drawing that its sentence heads.</summary>
    public Trend Heads { get; init; }
}
