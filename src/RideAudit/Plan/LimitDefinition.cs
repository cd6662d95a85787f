using RideAudit.Formatting;

namespace RideAudit.Plan;

/// <summary>One limit: its name in the rider file, its unit, the range a rider file may give it, and what it means.</summary>
internal sealed record LimitDefinition
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

    /// <summary>How it reads beside a rule: <c>#</c> stands for the value with its unit, <c>*</c> for the value alone.</summary>
    public required string Phrase { get; init; }

    internal Func<Limits, double?> Read { get; init; } = _ => null;

    internal Func<Limits, double, Limits> Write { get; init; } = (limits, _) => limits;

    /// <summary>The limit with a value, in a few words: <c>looks at rides of at least 90 min</c>.</summary>
    /// <param name="value">In its unit.</param>
    public string InWords(double value) => Phrase
        .Replace("#", Quantity(value), StringComparison.Ordinal)
        .Replace("*", Shown.Plain(value), StringComparison.Ordinal);

    private string Quantity(double value) => Unit switch
    {
        "share" => Shown.PlainShare(value),
        "times" => Shown.Plain(value),
        "days" or "weeks" or "rides" => Shown.Tally((long)value, Unit[..^1]),
        "h" => Shown.Length(value * 3600),
        _ => Shown.Plain(value) + Shown.Joint + Unit,
    };
}
