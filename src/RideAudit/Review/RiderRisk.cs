using RideAudit.Document;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Where a rider stands among others: by what may happen to the rider, never by how many rules.</summary>
/// <remarks>
/// The order is our choice, common practice without a source: a broken rule that guards the rider, coming back first, then rest after load, then spacing, as
/// the rules rank themselves; an ill week; a week that nobody has seen, be it without a review or without a ride and a reason; a watched rule that guards
/// the rider; a broken rule that shapes the week; a watched one; a week with an event, whose recovery comes next; a week that could not be judged; a week away; the rest.
/// </remarks>
/// <param name="Step">The step of that order, 0 first.</param>
/// <param name="Rank">The rank of the rule that led there; 0 where none did.</param>
internal readonly record struct RiderRisk(int Step, int Rank) : IComparable<RiderRisk>
{
    private enum Steps
    {
        GuardBroken,
        Ill,
        Unseen,
        GuardWatched,
        ShapeBroken,
        ShapeWatched,
        Event,
        NotJudged,
        Away,
        Kept,
    }

    /// <summary>The risk of one rider.</summary>
    /// <param name="review">The review; null: nobody has seen the week.</param>
    /// <param name="need">What the rider needs.</param>
    public static RiderRisk Of(ReviewDocument? review, RosterNeed need)
    {
        if (review is null)
            return At(Steps.Unseen);
        var ranked = RuleBook.MostSerious(review.Findings);
        if (ranked.FirstOrDefault(f => f.Verdict == Verdict.Broken && f.Standing.Protects) is { } guard)
            return At(Steps.GuardBroken, guard);
        if (review.Week.Exception == ExceptionKind.Ill)
            return At(Steps.Ill);
        if (review.Week is { RideCount: 0, Exception: null })
            return At(Steps.Unseen);
        if (need == RosterNeed.Away)
            return At(Steps.Away);
        if (ranked.FirstOrDefault(f => f.Standing.Protects) is { } watched)
            return At(Steps.GuardWatched, watched);
        if (ranked.FirstOrDefault() is { } first)
            return At(first.Verdict == Verdict.Broken ? Steps.ShapeBroken : Steps.ShapeWatched, first);
        return At(need switch { RosterNeed.Event => Steps.Event, RosterNeed.NotJudged => Steps.NotJudged, _ => Steps.Kept });
    }

    /// <inheritdoc/>
    public int CompareTo(RiderRisk other) => (Step, Rank).CompareTo((other.Step, other.Rank));

    private static RiderRisk At(Steps step, Finding? finding = null) => new((int)step, finding?.Standing.Rank ?? 0);
}
