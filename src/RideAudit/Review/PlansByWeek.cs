using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Review;

/// <summary>The plan that was in force for an earlier week, as that week's own review would have had it.</summary>
internal static class PlansByWeek
{
    /// <summary>The plan of a week.</summary>
    /// <param name="book">The weeks up to the reviewed one.</param>
    /// <param name="week">Its place among them, 0 the first.</param>
    /// <param name="table">The plan tables.</param>
    public static PlanInForce Of(Workbook book, int week, PlanTable table)
    {
        if (week == book.Weeks.Length - 1)
            return book.Plan;
        var rider = book.Plan.Rider;
        var before = new List<WeekHours>();
        for (var earlier = 0; earlier < week; earlier++)
        {
            var facts = book.Weeks[earlier];
            before.Add(new WeekHours(facts.StartsOn, facts.Hours, facts.Exception is not null, earlier == 0 ? facts.FirstRideOn : null));
        }
        return PlanInForce.For(rider, before, book.Weeks[week].StartsOn, table);
    }
}
