using RideAudit.Document.Json;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;

namespace RideAudit.Tests.Next;

public class ProgrammeTests
{
    private static readonly Rider Regular = RiddenWeeks.RiderOf(7, Experience.Regular);

    [Fact]
    public void Sixteen_weeks_break_no_rule_and_every_fourth_is_lighter()
    {
        var weeks = RiddenWeeks.LayOut(Regular, 16).Weeks;
        Assert.Equal(16, weeks.Length);
        Assert.DoesNotContain(weeks.SelectMany(w => w.Verdicts), v => v.Verdict == Verdict.Broken);
        Assert.All(weeks.Select((w, i) => (w, i)), x => Assert.Equal(x.i % 4 == 3, x.w.ProposedLighter));
    }

    [Fact]
    public void A_lighter_week_keeps_the_number_of_rides_and_shortens_them()
    {
        var weeks = RiddenWeeks.LayOut(Regular, 4).Weeks;
        Assert.Equal(weeks[2].Days.Count(d => d.Minutes > 0), weeks[3].Days.Count(d => d.Minutes > 0));
        Assert.InRange(weeks[3].Hours, 0.5 * weeks[2].Hours, 0.75 * weeks[2].Hours);
    }

    [Fact]
    public void A_test_is_laid_out_every_six_weeks()
    {
        var weeks = RiddenWeeks.LayOut(Regular, 16).Weeks;
        var tests = weeks.Select((w, i) => (w, i)).Where(x => x.w.Days.Any(d => d.Sessions.Any(s => s.Session == "twenty-minute test"))).Select(x => x.i).ToList();
        Assert.Equal(3, tests.Count);
        Assert.All(tests.Zip(tests.Skip(1)), p => Assert.InRange(p.Second - p.First, 6, 7));
    }

    [Fact]
    public void Hard_sessions_move_on_over_the_weeks()
    {
        var names = RiddenWeeks.LayOut(Regular, 9).Weeks.SelectMany(w => w.Days).SelectMany(d => d.Sessions).Where(s => s.Kind == PlannedKind.Threshold).Select(s => s.Session).Distinct();
        Assert.True(names.Count() >= 3);
    }

    [Fact]
    public void An_event_has_a_lighter_week_before_it_openers_on_its_eve_and_rest_after_it()
    {
        var race = RiddenWeeks.Monday.PlusDays(7 * 5 + 5);
        var weeks = RiddenWeeks.LayOut(Regular with { Exceptions = [new PlanException(race, race, ExceptionKind.Event)] }, 7).Weeks;
        Assert.True(weeks[4].Hours < 0.8 * weeks[2].Hours);
        var week = weeks[5];
        Assert.Equal(ExceptionKind.Event, week.Days[5].Exception);
        Assert.Equal("openers", week.Days[4].Sessions.Single().Session);
        Assert.Empty(week.Days[6].Sessions);
        Assert.DoesNotContain(week.Days[3].Sessions.Concat(weeks[6].Days[0].Sessions), s => PlannedKinds.IsHard(s.Kind));
    }

    [Fact]
    public void Nothing_hard_is_laid_out_within_two_days_of_illness_and_no_riding_on_it()
    {
        var ill = new PlanException(RiddenWeeks.Monday.PlusDays(-2), RiddenWeeks.Monday.PlusDays(1), ExceptionKind.Ill);
        var week = RiddenWeeks.LayOut(Regular with { Exceptions = [ill] }).Weeks.Single();
        Assert.Empty(week.Days[0].Sessions.Concat(week.Days[1].Sessions));
        Assert.DoesNotContain(week.Days[2].Sessions.Concat(week.Days[3].Sessions), s => PlannedKinds.IsHard(s.Kind));
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict == Verdict.Broken);
    }

    [Fact]
    public void A_row_made_by_hand_stands_and_nothing_else_is_laid_out_on_its_day()
    {
        var table = TableOf($"date,kind,minutes,session\n{RiddenWeeks.Monday.PlusDays(3):uuuu-MM-dd},endurance,80,ride to work\n{RiddenWeeks.Monday.PlusDays(5):uuuu-MM-dd},rest,,\n");
        var week = RiddenWeeks.LayOut(Regular, 1, table).Weeks.Single();
        Assert.Equal(("ride to work", 80, true), week.Days[3].Sessions.Select(s => (s.Session!, s.Minutes, s.Stands)).Single());
        Assert.Empty(week.Days[5].Sessions);
    }

    [Fact]
    public void Two_high_days_in_a_row_are_told_before_they_are_ridden_with_the_smallest_change()
    {
        var table = TableOf(
            $"date,kind,minutes,session\n{RiddenWeeks.Monday.PlusDays(1):uuuu-MM-dd},high,60,four fours\n{RiddenWeeks.Monday.PlusDays(2):uuuu-MM-dd},high,60,five threes\n{RiddenWeeks.Monday.PlusDays(5):uuuu-MM-dd},long,180,\n");
        var week = PlanCheck.Judge(new NextStart { AsOf = RiddenWeeks.Monday, StartsOn = RiddenWeeks.Monday, Past = [] }, Regular, table, 4).Weeks.Single();
        Assert.Equal(Verdict.Broken, week.Verdicts.Single(v => v.Rule == "hard-day-spacing").Verdict);
        Assert.NotEmpty(week.SmallestChange!.Changes);
        Assert.Contains("hard-day-spacing", week.SmallestChange.Keeps);
    }

    [Fact]
    public void The_document_has_weeks_of_days_of_sessions_with_blocks()
    {
        var json = ReviewJson.Write(RiddenWeeks.LayOut(Regular));
        Assert.Contains("\"schema\": \"rideaudit-next/1\"", json, StringComparison.Ordinal);
        foreach (var name in new[] { "weeks", "days", "sessions", "blocks", "verdicts", "gave_way" })
            Assert.Contains($"\"{name}\"", json, StringComparison.Ordinal);
    }

    private static PlanTable TableOf(string csv) => PlanTable.Merge([PlanTableReader.Read(csv, "plan.csv")]);
}
