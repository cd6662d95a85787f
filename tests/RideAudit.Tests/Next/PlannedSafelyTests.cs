using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Json;
using RideAudit.Document.Layouts;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

/// <summary>What a coach would not lay out is not laid out: by what the rider has, by what lies behind and before the week.</summary>
public class PlannedSafelyTests
{
    private static readonly LocalDate Monday = RiddenWeeks.Monday;
    private static readonly Rider Regular = RiddenWeeks.RiderOf(7, Experience.Regular);

    [Theory]
    [InlineData(null, null, " of 10", " W", " bpm")]
    [InlineData(null, 168.0, " bpm", " W", null)]
    [InlineData(250.0, null, " W", " bpm", " of 10")]
    public void Sessions_are_told_in_what_the_rider_has_and_in_nothing_else(double? power, double? heartRate, string told, string never, string? neither)
    {
        var rider = Regular with { Thresholds = power is null && heartRate is null ? [] : [new ThresholdEntry(Monday, power is { } w ? new Watts(w) : null, heartRate)] };
        var weeks = RiddenWeeks.LayOut(rider, 8).Weeks;
        Assert.Equal(8, weeks.Length);
        var sentences = weeks.SelectMany(w => w.Days).SelectMany(d => d.Sessions).Select(s => s.Sentence.Replace('\u00A0', ' ')).ToList();
        Assert.All(sentences, s => Assert.DoesNotContain(never, s, StringComparison.Ordinal));
        Assert.All(sentences, s => Assert.False(neither is not null && s.Contains(neither, StringComparison.Ordinal), s));
        Assert.All(sentences, s => Assert.DoesNotContain("%", s, StringComparison.Ordinal));
        Assert.Contains(sentences, s => s.Contains(told, StringComparison.Ordinal));
        // Of several repeats none is all there is.
        Assert.All(sentences, s => Assert.DoesNotContain("feel 10", s, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Experience.New)]
    [InlineData(Experience.Regular)]
    [InlineData(Experience.Racing)]
    public void The_trades_hard_days_never_exceed_the_limits_of_any_volume(Experience experience)
    {
        foreach (var planned in new[] { 3, 5, 6.5, 8, 11, 15, 18 })
        {
            var limits = PlanInForce.For(Regular with { Experience = experience, Plan = Regular.Plan with { WeeklyHours = planned } }, []).Limits;
            // The tier of hours that are a step on the way to those planned may be a lower one.
            foreach (var tier in Enum.GetValues<Tier>())
            {
                var (high, threshold) = WeekAim.HardDaysOf(tier, experience, limits);
                Assert.InRange(high, 0, limits.HighDaysAtMost);
                Assert.InRange(threshold, 0, limits.HighDaysAtMost + limits.ThresholdDaysOnTop - high);
            }
        }
    }

    [Theory]
    [InlineData(18, Experience.Racing)]
    [InlineData(16, Experience.Regular)]
    [InlineData(11, Experience.Racing)]
    public void No_ride_grows_far_beyond_the_longest_of_late_however_many_hours_are_planned(double hours, Experience experience)
    {
        var rider = RiddenWeeks.RiderOf(hours, experience);
        var past = Weeks(2, 120, 120, 150, 90, 90);
        var week = RiddenWeeks.LayOut(rider, past).Weeks.Single();
        Assert.All(week.Days.SelectMany(d => d.Sessions), s => Assert.InRange(s.MinutesTo, 0, 1.3 * 150));
        Assert.InRange(week.Hours, 0, 1.3 * 9.5);
    }

    [Theory]
    [InlineData(14)]
    [InlineData(18)]
    public void Without_a_ride_to_go_by_the_longest_is_a_third_of_the_week_or_a_fifth_more_than_asked_for(double hours)
    {
        var week = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, Experience.Racing)).Weeks.Single();
        Assert.InRange(week.Days.Max(d => d.Minutes), 120, Math.Max(hours * 60 / 3, 1.2 * week.LongRideMinutes!.Value) + 10);
    }

    [Fact]
    public void After_a_week_away_the_first_week_is_shorter_and_without_a_high_day_in_its_first_four()
    {
        var away = new PlanException(Monday.PlusDays(-9), Monday.PlusDays(-1), ExceptionKind.Away);
        var past = Weeks(6, 90, 60, 150, 60, 60).Add(Empty(Monday.PlusDays(-7)));
        var week = RiddenWeeks.LayOut(Regular with { Exceptions = [away] }, Moved(past)).Weeks.Single();
        Assert.InRange(week.Hours, 1, 0.7 * 7);
        Assert.DoesNotContain(week.Days.Take(4).SelectMany(d => d.Sessions), s => s.Kind == PlannedKind.High);
        Assert.DoesNotContain(week.Verdicts, v => v is { Rule: "return-to-riding", Verdict: Verdict.Broken or Verdict.Watch });
        Assert.NotEmpty(week.Days.SelectMany(d => d.Sessions));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void Days_away_in_the_week_hold_nothing_and_the_days_left_are_not_crammed(int days)
    {
        var away = new PlanException(Monday.PlusDays(2), Monday.PlusDays(1 + days), ExceptionKind.Away);
        var week = RiddenWeeks.LayOut(Regular with { Exceptions = [away] }).Weeks.Single();
        Assert.All(week.Days.Where(d => d.Exception == ExceptionKind.Away), d => Assert.Empty(d.Sessions));
        Assert.InRange(week.Hours, 0.5, 7.0 * (7 - days) / 7 + 0.1);
        Assert.DoesNotContain(week.Verdicts, v => v.Verdict is Verdict.Broken);
    }

    [Theory]
    [InlineData(240)]
    [InlineData(420)]
    [InlineData(90)]
    public void An_event_however_long_has_short_easy_rides_and_openers_before_it(int minutes)
    {
        var rider = RiddenWeeks.RiderOf(5, Experience.Regular, (IsoDayOfWeek.Tuesday, 75), (IsoDayOfWeek.Thursday, 75), (IsoDayOfWeek.Friday, 60), (IsoDayOfWeek.Saturday, 180), (IsoDayOfWeek.Sunday, 180));
        var week = EventOnSaturday(rider, minutes);
        Assert.Equal("openers", week.Days[4].Sessions.Single().Session);
        Assert.Contains(week.Notes, n => n.Contains("with openers on Friday", StringComparison.Ordinal));
        Assert.NotEmpty(week.Days.Take(4).SelectMany(d => d.Sessions));
        Assert.DoesNotContain(week.Days.Take(5).SelectMany(d => d.Sessions), s => s.Kind is PlannedKind.Long || s.Minutes > 75);
        Assert.Empty(week.Days[6].Sessions);
    }

    [Fact]
    public void Openers_are_on_the_day_with_room_where_the_eve_of_the_event_has_none_and_no_note_promises_what_is_not_laid_out()
    {
        var free = new[] { (IsoDayOfWeek.Tuesday, 75), (IsoDayOfWeek.Thursday, 75), (IsoDayOfWeek.Saturday, 180) };
        var week = EventOnSaturday(RiddenWeeks.RiderOf(5, Experience.Regular, free), 240);
        Assert.Equal("openers", week.Days[3].Sessions.Single().Session);
        Assert.Contains(week.Notes, n => n.Contains("with openers on Thursday", StringComparison.Ordinal));
        var none = EventOnSaturday(RiddenWeeks.RiderOf(5, Experience.Regular, (IsoDayOfWeek.Tuesday, 75), (IsoDayOfWeek.Saturday, 180)), 240);
        Assert.DoesNotContain(none.Notes, n => n.Contains("openers", StringComparison.Ordinal));
    }

    [Fact]
    public void Sprints_come_now_and_then_for_riders_of_some_experience_and_never_for_new_ones()
    {
        Assert.Contains(Purposes(Experience.Regular), p => p == SessionPurpose.Sprints);
        Assert.Contains(Purposes(Experience.Racing), p => p == SessionPurpose.Sprints);
        Assert.InRange(Purposes(Experience.Regular).Count(p => p == SessionPurpose.Sprints), 1, 4);
        Assert.DoesNotContain(Purposes(Experience.New), p => p == SessionPurpose.Sprints);

        static List<SessionPurpose> Purposes(Experience experience) =>
            [.. RiddenWeeks.LayOut(RiddenWeeks.RiderOf(6.5, experience), 8).Weeks.SelectMany(w => w.Days).SelectMany(d => d.Sessions)
                .Where(s => s.Kind == PlannedKind.High).Select(s => SessionLibrary.Find(s.Session!)!.Purpose)];
    }

    [Fact]
    public void A_racing_rider_of_whom_nothing_is_known_does_not_begin_where_a_new_one_does()
    {
        Assert.All(Hard(Experience.Racing), s => Assert.NotEqual(Experience.New, s.Experience));
        Assert.All(Hard(Experience.New), s => Assert.Equal(Experience.New, s.Experience));

        static List<LibrarySession> Hard(Experience experience) =>
            [.. RiddenWeeks.LayOut(RiddenWeeks.RiderOf(7, experience)).Weeks.Single().Days.SelectMany(d => d.Sessions).Where(s => PlannedKinds.IsHard(s.Kind)).Select(s => SessionLibrary.Find(s.Session!)!)];
    }

    [Fact]
    public void Of_a_ride_that_stands_without_blocks_nobody_is_told_what_to_ride()
    {
        var rider = Regular with { FixedRides = [new FixedRide(IsoDayOfWeek.Wednesday, PlannedKind.Threshold, 90, "club ride")] };
        var table = TableOf($"date,kind,minutes,session\n{Monday.PlusDays(5):uuuu-MM-dd},long,180,\n{Monday.PlusDays(6):uuuu-MM-dd},endurance,60,steady and easy\n");
        var week = RiddenWeeks.LayOut(rider, 1, table).Weeks.Single();
        var check = PlanCheck.Judge(new NextStart { AsOf = Monday, StartsOn = Monday, Past = [] }, rider, table, 1).Weeks.Single();
        foreach (var bare in new[] { week.Days[2].Sessions.Single(), week.Days[5].Sessions.Single(), check.Days[5].Sessions.Single() })
        {
            Assert.Null(bare.Blocks);
            Assert.Equal("", bare.Sentence);
            Assert.True(bare.ExpectedStress > 50);
        }
        Assert.NotNull(check.Days[6].Sessions.Single().Blocks);
        Assert.NotEqual("", week.Days[6].Sessions.Single().Sentence);
    }

    [Fact]
    public void A_lighter_week_is_known_as_one_from_the_plan_table_alone()
    {
        var start = new NextStart { AsOf = Monday, StartsOn = Monday, Past = [] };
        var document = NextBuilder.LayOut(start, Regular, PlanTable.Empty, 5);
        var lighter = document.Weeks.Single(w => w.ProposedLighter);
        var (sheet, _) = PlanRows.Update(PlanSheet.New("plan.csv"), document, PlanTable.Empty);
        var text = PlanTableWriter.Write(sheet);
        var table = TableOf(text);
        Assert.Empty(table.Mistakes);
        Assert.True(new PlanCalendar(Regular, table).Week(lighter.StartsOn).Lighter);
        Assert.Equal(7, table.Week(lighter.StartsOn).Count(s => s.Exception == ExceptionKind.Lighter && s.MadeHere));
        var check = PlanCheck.Judge(start, Regular, table, 5).Weeks.Single(w => w.StartsOn == lighter.StartsOn);
        Assert.Null(check.LongRideMinutes);
        Assert.DoesNotContain(check.Verdicts, v => v.Verdict is Verdict.Watch or Verdict.Broken);
        // Laid out again from the same day the same weeks come out: what the program wrote before is no reason for itself.
        Assert.Equal(ReviewJson.Write(document), ReviewJson.Write(NextBuilder.LayOut(start, Regular, table, 5)));
    }

    [Fact]
    public void Check_asked_in_the_middle_of_a_week_without_any_ride_judges_the_rest_of_it()
    {
        var table = TableOf($"date,kind,minutes,session\n{Monday.PlusDays(1):uuuu-MM-dd},high,60,four threes\n{Monday.PlusDays(4):uuuu-MM-dd},high,60,four threes\n{Monday.PlusDays(5):uuuu-MM-dd},high,60,five threes\n");
        var wednesday = Monday.PlusDays(2);
        var week = PlanCheck.Build(Nothing, Regular, new ReviewRequest { Today = wednesday, AsOf = wednesday }, table).Weeks.Single();
        Assert.Equal((Monday, wednesday), (week.StartsOn, week.From));
        Assert.Empty(week.Days[1].Sessions);
        Assert.Equal(2, week.Days.Sum(d => d.Sessions.Length));
        Assert.Equal(Verdict.Broken, week.Verdicts.Single(v => v.Rule == "hard-day-spacing").Verdict);
    }

    [Fact]
    public void Next_without_any_ride_begins_with_a_whole_week()
    {
        var wednesday = Monday.PlusDays(2);
        var week = NextBuilder.Build(Nothing, Regular, new ReviewRequest { Today = wednesday, AsOf = wednesday }).Weeks.Single();
        Assert.Equal(Monday.PlusDays(7), week.From);
    }

    private static FolderContent Nothing => new() { FilesSeen = 0, Recordings = [], Notices = [], TimeZone = "Europe/Lisbon" };

    private static NextWeekEntry EventOnSaturday(Rider rider, int minutes)
    {
        var table = TableOf($"date,kind,minutes,session\n{Monday.PlusDays(5):uuuu-MM-dd},event,{minutes},the gravel day\n");
        return RiddenWeeks.LayOut(rider, Weeks(5, 60, 60, 120, 60), 1, table).Weeks.Single();
    }

    private static PlanTable TableOf(string csv) => PlanTable.Merge([PlanTableReader.Read(csv, "plan.csv")]);

    // Easy rides on Tuesday and the days after it, of so many minutes each.
    private static ImmutableArray<WeekFacts> Weeks(int count, params int[] minutes)
    {
        var built = ImmutableArray.CreateBuilder<WeekFacts>();
        for (var i = 0; i < count; i++)
        {
            var startsOn = Monday.PlusDays(7 * (i - count));
            ImmutableArray<DayFacts> days = [.. Enumerable.Range(0, 7).Select(d => Day(startsOn.PlusDays(d), d > 0 && d <= minutes.Length ? minutes[d - 1] : 0))];
            built.Add(WeekFacts.Build(days, built.Count == 0 ? default : built[^1].LoadAfter, Monday.PlusDays(-7 * count + 1)));
        }
        return built.ToImmutable();
    }

    private static DayFacts Day(LocalDate date, int minutes)
    {
        if (minutes == 0)
            return DayFacts.Build(date, [], 0, new Limits());
        var fitted = FittedSession.Fit(UsualSession.Of(PlannedKind.Endurance, minutes, Experience.Regular), minutes)!;
        return DayFacts.Build(date, [PlannedTrace.FiguresOf(fitted, date, Regular, new Limits()) with { File = $"{date}" }], 0, new Limits());
    }

    private static WeekFacts Empty(LocalDate startsOn) =>
        WeekFacts.Build([.. Enumerable.Range(0, 7).Select(d => DayFacts.Build(startsOn.PlusDays(d), [], 0, new Limits()))], default, null);

    // The weeks before the last one, a week earlier each, so that they end where the last begins.
    private static ImmutableArray<WeekFacts> Moved(ImmutableArray<WeekFacts> past)
    {
        var built = ImmutableArray.CreateBuilder<WeekFacts>();
        LocalDate? first = null;
        for (var i = 0; i < past.Length; i++)
        {
            var startsOn = Monday.PlusDays(7 * (i - past.Length));
            ImmutableArray<DayFacts> days = [.. past[i].Days.Select((d, n) => DayFacts.Build(
                startsOn.PlusDays(n), d.Rides.Select(r => r with { StartsAt = (startsOn.PlusDays(n) + LocalTime.Noon).WithOffset(Offset.Zero) }), 0, new Limits()))];
            first ??= days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date;
            built.Add(WeekFacts.Build(days, built.Count == 0 ? default : built[^1].LoadAfter, first));
        }
        return built.ToImmutable();
    }
}
