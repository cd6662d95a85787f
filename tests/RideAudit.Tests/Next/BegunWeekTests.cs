using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

/// <summary>Asked in the middle of a week: what is ridden stays, what was missed moves or is dropped and the reason is said.</summary>
public class BegunWeekTests
{
    private static readonly Rider Regular = RiddenWeeks.RiderOf(
        6.5, Experience.Regular, (IsoDayOfWeek.Tuesday, 60), (IsoDayOfWeek.Wednesday, 75), (IsoDayOfWeek.Thursday, 60), (IsoDayOfWeek.Friday, 60), (IsoDayOfWeek.Saturday, 210), (IsoDayOfWeek.Sunday, 150));

    private static readonly PlanTable Plan = TableOf("high 60|endurance 60|threshold 60||long 150|endurance 60");

    [Fact]
    public void A_high_session_missed_on_Tuesday_moves_to_a_day_left_and_the_note_says_where()
    {
        var week = On(Thursday, Plan, "", "", "endurance 60");
        var day = week.Days.First(d => d.Sessions.Any(s => s.Kind == PlannedKind.High)).Date;
        Assert.Contains($"Tuesday’s high session was not ridden; it is laid out on {day.DayOfWeek} instead.", week.Notes);
        Assert.True(day >= Thursday);
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict == Verdict.Broken);
    }

    [Fact]
    public void A_session_ridden_on_another_day_is_not_laid_out_again_and_the_note_says_so()
    {
        var week = On(Thursday, Plan, "", "", "high 60");
        Assert.Contains("Tuesday’s high session was ridden on Wednesday.", week.Notes);
        Assert.DoesNotContain(week.Days.SelectMany(d => d.Sessions), s => s.Kind == PlannedKind.High);
        Assert.Equal((DayKind.High, 60, true), (week.Days[2].Kind, week.Days[2].RiddenMinutes, week.Days[2].RiddenStress > 50));
    }

    [Fact]
    public void A_missed_session_is_dropped_when_the_week_has_its_hard_days_without_it()
    {
        var week = On(Friday, TableOf("high 60|endurance 60|high 60||long 150|"), "", "high 60", "endurance 60", "");
        Assert.Contains("Thursday’s high session was not ridden and is left out: the week has its hard days without it.", week.Notes);
        Assert.DoesNotContain(week.Days.SelectMany(d => d.Sessions), s => s.Kind == PlannedKind.High);
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict == Verdict.Broken);
    }

    [Fact]
    public void Hours_missed_are_not_crammed_into_the_days_left()
    {
        var week = On(Friday, Plan, "", "high 60", "", "");
        Assert.Contains(week.Notes, n => n.StartsWith("Wednesday’s endurance session was not ridden", StringComparison.Ordinal));
        // Up to 1.4 times the part of the days left; a layout may miss what it aims at by a sixteenth.
        Assert.InRange(week.Days.Sum(d => d.Minutes), 120, 1.0625 * (60 + 1.4 * 390 * 3 / 7) - 60);
    }

    [Fact]
    public void A_long_ride_missed_on_Saturday_is_left_out_where_no_day_has_room_for_it()
    {
        var rider = Regular with { MinutesFree = Regular.MinutesFree!.SetItem(IsoDayOfWeek.Sunday, 60) };
        var week = NextBuilder.LayOut(Start(RiddenWeeks.Monday.PlusDays(6), "", "high 60", "endurance 60", "threshold 60", "", ""), rider, Plan, 1).Weeks.Single();
        Assert.Contains("Saturday’s long session was not ridden and is left out: no day left has room for it.", week.Notes);
    }

    [Fact]
    public void What_is_ridden_stands_as_ridden_and_is_written_into_no_plan()
    {
        var week = On(Thursday, PlanTable.Empty, "", "high 60", "endurance 75");
        Assert.Equal([60, 75], week.Days.Take(3).Skip(1).Select(d => d.RiddenMinutes));
        Assert.All(week.Days.Take(3), d => Assert.Empty(d.Sessions));
        Assert.Equal(Thursday, week.From);
        Assert.All(PlanRows.Of(RiddenWeeks.Document(week)), r => Assert.True(r.Date >= Thursday));
    }

    [Fact]
    public void Two_hard_days_ridden_already_leave_no_other_one_in_the_week()
    {
        var week = On(Friday, PlanTable.Empty, "", "high 60", "", "threshold 60");
        Assert.DoesNotContain(week.Days.SelectMany(d => d.Sessions), s => PlannedKinds.IsHard(s.Kind));
        Assert.Contains(week.Days.SelectMany(d => d.Sessions), s => s.Kind == PlannedKind.Long);
    }

    [Fact]
    public void A_week_laid_out_as_lighter_stays_lighter_when_it_has_begun()
    {
        var rows = TableOf("high 60|endurance 40|||endurance 60|", ExceptionKind.Lighter);
        var week = On(Thursday, rows, "", "high 60", "endurance 40");
        Assert.Equal(ExceptionKind.Lighter, week.Exception);
        Assert.InRange(week.Hours, 2, 4.5);
    }

    private static LocalDate Thursday => RiddenWeeks.Monday.PlusDays(3);

    private static LocalDate Friday => RiddenWeeks.Monday.PlusDays(4);

    private static NextWeekEntry On(LocalDate asOf, PlanTable table, params string[] ridden) =>
        NextBuilder.LayOut(Start(asOf, ridden), Regular, table, 1).Weeks.Single();

    private static NextStart Start(LocalDate asOf, params string[] ridden) => new()
    {
        AsOf = asOf,
        StartsOn = RiddenWeeks.Monday,
        Past = [],
        Ridden = [.. Enumerable.Range(0, Period.DaysBetween(RiddenWeeks.Monday, asOf)).Select(i => Day(RiddenWeeks.Monday.PlusDays(i), i < ridden.Length ? ridden[i] : ""))],
    };

    private static DayFacts Day(LocalDate date, string ridden)
    {
        if (ridden.Length == 0)
            return DayFacts.Build(date, [], 0, new Limits());
        var words = ridden.Split(' ');
        var minutes = int.Parse(words[1], System.Globalization.CultureInfo.InvariantCulture);
        var kind = Enum.Parse<PlannedKind>(words[0], ignoreCase: true);
        var fitted = FittedSession.Fit(UsualSession.Of(kind, minutes, Experience.Regular), minutes)!;
        return DayFacts.Build(date, [PlannedTrace.FiguresOf(fitted, date, Regular, new Limits()) with { File = ridden }], 0, new Limits());
    }

    // Tuesday to Sunday, a bar between, as the program wrote it.
    private static PlanTable TableOf(string days, ExceptionKind? exception = null)
    {
        PlannedSession[] rows = [.. days.Split('|').Select((d, i) => RowOf(RiddenWeeks.Monday.PlusDays(i + 1), d.Split(' ')) with { Exception = exception })];
        var (sheet, _) = PlanTableWriter.Update(PlanSheet.New("plan.csv"), [.. rows], RiddenWeeks.Monday, RiddenWeeks.Monday.PlusDays(6));
        return PlanTable.Merge([PlanTableReader.Read(PlanTableWriter.Write(sheet), "plan.csv")]);
    }

    private static PlannedSession RowOf(LocalDate date, string[] words) => words.Length < 2
        ? new PlannedSession { Date = date, Kind = PlannedKind.Rest }
        : new PlannedSession { Date = date, Kind = Enum.Parse<PlannedKind>(words[0], ignoreCase: true), Minutes = int.Parse(words[1], System.Globalization.CultureInfo.InvariantCulture) };
}
