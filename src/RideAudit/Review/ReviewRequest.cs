using NodaTime;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>What to review, and from when.</summary>
public sealed record ReviewRequest
{
    /// <summary>Today in the rider's zone: the as-of date unless another is given.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The date asked for; null: <see cref="Today"/>, or the week after the last ride when that is more than 28 days ago.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>Any day of the week to review; null: the last week that ended before the as-of date.</summary>
    public LocalDate? WeekOf { get; init; }

    /// <summary>True to give each row of <c>rides</c> its whole best-mean-power curve.</summary>
    public bool WithPowerCurves { get; init; }

    /// <summary>The coach's note where it is given apart from the folder; null: the folder's own of the week.</summary>
    public string? Note { get; init; }

    /// <summary>The rules to judge by.</summary>
    public RuleBook Rules { get; init; } = RuleBook.Standard;
}
