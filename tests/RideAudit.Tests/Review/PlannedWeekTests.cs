using System.Text;
using System.Text.Json.Nodes;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Held;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Tests.Support;

namespace RideAudit.Tests.Review;

/// <summary>A plan table in the folder is part of the review. What each week should say was worked out by hand: common practice, no source.</summary>
public sealed class PlannedWeekTests
{
    private static readonly LocalDate Monday = new(2026, 5, 18);

    private const string Plan = """
        date,kind,minutes,session,note
        2026-05-18,rest,,,
        2026-05-19,high,60,four fours,on the hill
        2026-05-20,endurance,60,,
        2026-05-21,threshold,60,three tens at threshold,
        2026-05-23,long,180,,
        2026-05-24,endurance,90,,
        """;

    private static readonly (int Day, float[] Power)[] AsPlanned = [(1, High), (2, Easy(60)), (3, Threshold), (5, Easy(180)), (6, Easy(90))];

    private static float[] High => Made.Blocks((900, 150), (240, 280), (180, 150), (240, 280), (180, 150), (240, 280), (180, 150), (240, 280), (1200, 150));

    private static float[] Threshold => Made.Blocks((900, 150), (600, 238), (300, 150), (600, 238), (300, 150), (600, 238), (300, 150));

    [Fact]
    public void A_week_ridden_as_planned_is_done_line_by_line()
    {
        var week = Review(Plan, AsPlanned).Week;

        Assert.Equal((7.5, 6), (week.Planned!.Hours, week.Planned.Sessions.Length));
        Assert.All(week.PlannedAndRidden, l => Assert.Equal(HeldOutcome.Done, Assert.Single(l.Outcomes)));
        Assert.Equal("Tuesday’s four fours: done.", week.PlannedAndRidden[1].Sentence);
        Assert.Equal((PlannedKind.High, "on the hill"), (week.Days[1].Planned.Single().Kind, week.Days[1].Planned.Single().Note));
        Assert.Empty(week.Days[4].Planned);
        Assert.True(week.Planned.Sessions[1].Stress is > 40 and < 100);
        Assert.Null(week.Planned.Sentence);
    }

    [Fact]
    public void The_planned_hours_stand_for_the_weekly_hours()
    {
        // Seven and a half hours ridden: as the week was planned, and half as much again as usual.
        Assert.Equal(Verdict.Broken, Of(Review(null, AsPlanned), "weekly-hours").Verdict);
        var planned = Of(Review(Plan, AsPlanned), "weekly-hours");
        Assert.Equal(Verdict.Kept, planned.Verdict);
        Assert.Contains("7.5", planned.Sentence.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Without_a_plan_table_nothing_is_planned()
    {
        var week = Review(null, AsPlanned).Week;
        Assert.Null(week.Planned);
        Assert.Empty(week.PlannedAndRidden);
        Assert.All(week.Days, d => Assert.Empty(d.Planned));
        var json = JsonNode.Parse(ReviewJson.Write(Review(null, AsPlanned)))!["week"]!;
        Assert.Null(json["planned"]);
        Assert.Empty(json["planned_and_ridden"]!.AsArray());
    }

    [Fact]
    public void A_session_moved_beside_another_hard_day_is_said_to_have_done_it()
    {
        var week = Review(Plan, (1, High), (2, Threshold), (3, Easy(60)), (5, Easy(180)), (6, Easy(90))).Week;

        var line = week.PlannedAndRidden.Single(l => l.Planned?.Session == "three tens at threshold");
        Assert.Equal(HeldOutcome.Moved, Assert.Single(line.Outcomes));
        Assert.Equal(Monday.PlusDays(2), line.RiddenOn);
        Assert.Contains("hard-day-spacing", line.Against);
        Assert.StartsWith("Thursday’s three tens at threshold: ridden on Wednesday. That put two hard days next to each other", line.Sentence);
    }

    [Fact]
    public void A_session_moved_within_the_rules_is_as_good_as_on_its_day_and_is_said_to_be()
    {
        var week = Review(Plan, (1, High), (2, Easy(60)), (3, Threshold), (5, Easy(90)), (6, Easy(180))).Week;

        Assert.All(week.PlannedAndRidden.Where(l => l.Outcomes.Contains(HeldOutcome.Moved)), l =>
        {
            Assert.Empty(l.Against);
            Assert.EndsWith("No rule is the worse for it.", l.Sentence);
        });
        Assert.Equal(2, week.PlannedAndRidden.Count(l => l.Outcomes.Contains(HeldOutcome.Moved)));
    }

    [Fact]
    public void A_plan_that_breaks_a_rule_is_told_so_and_the_rider_who_rode_it_is_not_blamed()
    {
        var twoInARow = Plan.Replace("2026-05-21,threshold,60,three tens at threshold", "2026-05-20,high,60,six threes").Replace("2026-05-20,endurance", "2026-05-21,endurance");
        var week = Review(twoInARow, (1, High), (2, High), (3, Easy(60)), (5, Easy(180)), (6, Easy(90))).Week;

        Assert.Contains("hard-day-spacing", week.Planned!.Breaks);
        Assert.Contains("the plan’s doing", week.Planned.Sentence);
        Assert.All(week.PlannedAndRidden, l => Assert.Empty(l.Against));
    }

    [Fact]
    public void A_missed_long_ride_is_named_with_what_it_took_from_the_week()
    {
        var week = Review(Plan, (1, High), (2, Easy(60)), (3, Threshold)).Week;

        var line = week.PlannedAndRidden.Single(l => l.Planned?.Kind == PlannedKind.Long);
        Assert.Equal(HeldOutcome.Missed, Assert.Single(line.Outcomes));
        Assert.Contains("long-ride", line.Against);
        Assert.Contains("without its long ride", line.Sentence);
    }

    [Fact]
    public void What_is_still_to_come_is_not_missed()
    {
        var review = Review(Plan, Monday.PlusDays(3), (1, High));
        Assert.Equal(6, review.Week.Planned!.Sessions.Length);
        Assert.Equal([Monday, Monday.PlusDays(1), Monday.PlusDays(2)], review.Week.PlannedAndRidden.Select(l => l.Planned!.Date));
        Assert.Equal(HeldOutcome.Missed, Assert.Single(review.Week.PlannedAndRidden[2].Outcomes));
    }

    [Fact]
    public void An_event_in_the_plan_is_an_event_to_the_rules()
    {
        var review = Review(Plan + "\n2026-05-22,event,240,,\n", [.. AsPlanned, (4, Easy(240))]);
        Assert.Equal(ExceptionKind.Event, review.Week.Exception);
        Assert.Equal(11.5, review.Week.Planned!.Hours);
    }

    [Theory]
    [InlineData(';', false)]
    [InlineData('\t', false)]
    [InlineData(';', true)]
    public void A_table_that_a_spreadsheet_saved_is_the_same_plan(char separator, bool utf16)
    {
        const string written = "date,kind,minutes,session,stress\r\n2026-05-19,high,60,four fours,71.5\r\n2026-05-20,rest,,,\r\n";
        var saved = "date|kind|minutes|session|stress\r\n19.05.2026|high|60|four fours|71,5\r\n20.05.2026|rest|||\r\n".Replace('|', separator);
        var encoding = utf16 ? Encoding.Unicode : Encoding.UTF8;
        byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes(saved)];

        var plain = Intake(("season.csv", Encoding.UTF8.GetBytes(written)));
        var again = Intake(("season.csv", bytes));

        Assert.Empty(again.Notices);
        Assert.Equal(2, plain.Plan.Sessions.Length);
        Assert.Equal(plain.Plan.Sessions.AsEnumerable(), again.Plan.Sessions);
        Assert.Equal(71.5, again.Plan.Sessions[0].Stress);
    }

    [Fact]
    public void A_plan_table_is_no_ride_log_and_its_mistakes_are_notices_with_line_and_column()
    {
        var content = Intake(
            ("plan.csv", Encoding.UTF8.GetBytes("date,kind,minutes\n2026-05-19,hihg,60\n2026-05-20,endurance,60\n")),
            ("log.csv", Encoding.UTF8.GetBytes("date,minutes,rating\n2026-05-19,60,7\n")));

        Assert.Single(content.LoggedRides);
        Assert.Equal([new LocalDate(2026, 5, 20)], content.Plan.Sessions.Select(s => s.Date));
        var notice = Assert.Single(content.Notices);
        Assert.Equal(("plan.csv", false), (notice.File, notice.Unusable));
        Assert.Contains("Line 2, column kind", notice.Sentence);
        Assert.Contains("high", notice.Sentence);
    }

    [Fact]
    public void The_same_table_twice_in_the_folder_counts_once()
    {
        var bytes = Encoding.UTF8.GetBytes("date,kind,minutes\n2026-05-19,high,60\n");
        var content = Intake(("a/plan.csv", bytes), ("plan.csv", bytes));
        Assert.Single(content.Plan.Sessions);
        Assert.Equal("duplicate", Assert.Single(content.Notices).Problem);
    }

    [Fact]
    public void The_demo_moved_a_session_and_missed_a_long_ride()
    {
        var week = DemoReview.Build().Week;
        var moved = week.PlannedAndRidden.Single(l => l.Outcomes.Contains(HeldOutcome.Moved));
        Assert.Equal((new LocalDate(2026, 6, 18), new LocalDate(2026, 6, 17)), (moved.Planned!.Date, moved.RiddenOn!.Value));
        Assert.Contains("hard-day-spacing", moved.Against);
        var missed = week.PlannedAndRidden.Single(l => l.Outcomes.Contains(HeldOutcome.Missed));
        Assert.Equal(PlannedKind.Long, missed.Planned!.Kind);
        Assert.Contains("long-ride", missed.Against);
    }

    private static Rider Rider => Made.Rider() with { Plan = new TrainingPlan { WeeklyHours = 5 } };

    private static Finding Of(ReviewDocument review, string rule) => review.Findings.Single(f => f.Rule == rule);

    private static ReviewDocument Review(string? plan, params (int Day, float[] Power)[] rides) =>
        Review(plan, Monday.PlusDays(7), rides);

    private static ReviewDocument Review(string? plan, LocalDate asOf, params (int Day, float[] Power)[] rides) => ReviewBuilder.Review(
        Folders.Of(Rides(rides)) with { Plan = plan is null ? PlanTable.Empty : PlanTable.Merge([PlanTableReader.Read(plan, "plan.csv")]) },
        Rider,
        new ReviewRequest { Today = asOf, AsOf = asOf, WeekOf = Monday })!;

    private static Recording[] Rides(params (int Day, float[] Power)[] rides) =>
        [.. rides.Select(r => Made.Recording($"day{r.Day}.fit", Monday.PlusDays(r.Day).At(new LocalTime(18, 0)).InUtc().ToInstant(), r.Power))];

    private static float[] Easy(int minutes) => Made.Flat(minutes * 60, 160);

    private static FolderContent Intake(params (string Name, byte[] Bytes)[] files)
    {
        var intake = new Intake(new Rider(), DateTimeZone.Utc);
        foreach (var (name, bytes) in files)
            intake.Add(name, new MemoryStream(bytes));
        return intake.Finish();
    }
}
