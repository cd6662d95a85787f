namespace RideAudit.Plan;

/// <summary>One limit: its name in the rider file, its unit, the range a rider file may give it, and what it means.</summary>
public sealed record LimitDefinition
{
    /// <summary>snake_case, with the unit where it is not a count or a share.</summary>
    public required string Name { get; init; }

    /// <summary>Unit in words: <c>days</c>, <c>h</c>, <c>min</c>, <c>s</c>, <c>share</c>, <c>%</c>, <c>points</c>, <c>weeks</c>, <c>bouts</c>, <c>times</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>Least value allowed.</summary>
    public required double Least { get; init; }

    /// <summary>Greatest value allowed.</summary>
    public required double Most { get; init; }

    /// <summary>Only whole numbers are allowed.</summary>
    public bool Whole { get; init; }

    /// <summary>What it means, a few words.</summary>
    public required string Meaning { get; init; }

    internal Func<Limits, double?> Read { get; init; } = _ => null;

    internal Func<Limits, double, Limits> Write { get; init; } = (limits, _) => limits;
}
