using RideAudit.Figures;

namespace RideAudit.Rules.Changes;

/// <summary>One ride as it was and as it would have been.</summary>
/// <param name="Kind">What is done to it.</param>
/// <param name="Was">As ridden.</param>
/// <param name="Now">As it would have been; null when left out.</param>
/// <param name="From">Its day in the week, 0 first.</param>
/// <param name="To">The day it would have been on.</param>
internal readonly record struct RideEdit(ChangeKind Kind, RideFigures Was, RideFigures? Now, int From, int To)
{
    /// <summary>It asks for no time that was not ridden at that hour.</summary>
    public bool TakesNoMoreTime => Now is null || (From == To && Now.ElapsedSeconds <= Was.ElapsedSeconds);
}
