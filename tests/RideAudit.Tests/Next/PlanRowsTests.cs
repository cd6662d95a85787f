using NodaTime;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Tests.Ingest;

namespace RideAudit.Tests.Next;

/// <summary>What is laid out is written into a plan table, and what a hand wrote is not touched.</summary>
public sealed class PlanRowsTests
{
    private static readonly LocalDate Monday = RiddenWeeks.Monday;
    private static readonly Rider Regular = RiddenWeeks.RiderOf(6.5, Experience.Regular);

    [Fact]
    public void Days_on_which_a_hand_wrote_are_kept_and_named_in_order()
    {
        var sheet = PlanTableReader.Read("date,kind,minutes\n2026-06-27,long,120\n2026-06-24,rest,\n", "plan.csv");
        var other = PlanTableReader.Read("date,kind,minutes,made_by\n2026-06-23,high,60,\n2026-06-25,endurance,45,\n", "coach.csv");
        var table = PlanTable.Merge([sheet, other]);
        var document = RiddenWeeks.LayOut(Regular, 1);
        var (updated, kept) = PlanRows.Update(sheet, document, table);
        Assert.Equal([Monday.PlusDays(1), Monday.PlusDays(2), Monday.PlusDays(3), Monday.PlusDays(5)], kept.ToArray());
        var written = PlanTable.Merge([PlanTableReader.Read(PlanTableWriter.Write(updated), "plan.csv")]);
        Assert.Equal([Monday, Monday.PlusDays(2), Monday.PlusDays(4), Monday.PlusDays(5), Monday.PlusDays(6)], written.Week(Monday).Select(s => s.Date).Distinct());
        Assert.Equal(120, written.On(Monday.PlusDays(5)).Single().Minutes);
    }

    [Fact]
    public void Nothing_laid_out_leaves_the_table_as_it_is()
    {
        var sheet = PlanTableReader.Read("date,kind,minutes\n2026-06-27,long,120\n", "plan.csv");
        var document = RiddenWeeks.LayOut(Regular, 1) with { Weeks = [] };
        var (updated, kept) = PlanRows.Update(sheet, document, PlanTable.Empty);
        Assert.Same(sheet, updated);
        Assert.Empty(kept);
    }

    [Fact]
    public void A_plan_is_judged_to_its_last_day_and_an_ended_one_says_so()
    {
        var table = PlanTable.Merge([PlanTableReader.Read("date,kind,minutes\n2026-06-23,endurance,60\n2026-07-06,endurance,60\n", "plan.csv")]);
        Assert.Equal([Monday, Monday.PlusDays(14)], Check(Monday, table).Weeks.Select(w => w.StartsOn));
        Assert.Empty(Check(Monday, table).Notes);
        Assert.Equal([Monday], Check(Monday, table, 1).Weeks.Select(w => w.StartsOn));
        Assert.Equal(["No week of the plan table is still to be ridden."], Check(Monday.PlusDays(21), table).Notes.ToArray());
        Assert.Equal(["No week of the plan table is still to be ridden."], Check(Monday, PlanTable.Empty).Notes.ToArray());
    }

    private static RideAudit.Document.Layouts.NextDocument Check(LocalDate asOf, PlanTable table, int? weeks = null) =>
        PlanCheck.Build(Reading.Of("log.csv", "date,start,minutes,rating\n"), Regular, new ReviewRequest { Today = asOf, AsOf = asOf }, table, weeks);
}
