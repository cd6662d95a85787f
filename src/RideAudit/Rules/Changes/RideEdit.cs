using RideAudit.Figures;

namespace RideAudit.Rules.Changes;

/// <summary>One ride as it was and as it would have been.</summary>
/// <param name="Was">As ridden.</param>
/// <param name="Now">As it would have been.</param>
/// <param name="From">Its day in the week, 0 first.</param>
/// <param name="To">The day it would have been on.</param>
internal readonly record struct RideEdit(RideFigures Was, RideFigures Now, int From, int To)
{
    /// <summary>Neither moved nor lengthened.</summary>
    public bool TakesTheSameTime => From == To && Now.ElapsedSeconds <= Was.ElapsedSeconds;
}
