using RideAudit.Figures;

namespace RideAudit.Rules;

/// <summary>From the end of one hard ride to the start of the next.</summary>
/// <param name="Earlier">The earlier ride; it may lie in the week before.</param>
/// <param name="Later">The later ride.</param>
/// <param name="Verdict">What the rule says of it.</param>
public readonly record struct HardSpan(RideFigures Earlier, RideFigures Later, Verdict Verdict)
{
    /// <summary>Hours between, unrounded.</summary>
    public double Hours => (Later.StartsAt.ToInstant() - Earlier.EndsAt.ToInstant()).TotalHours;
}
