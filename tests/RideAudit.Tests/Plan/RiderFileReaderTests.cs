using NodaTime;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Tests.Plan;

public class RiderFileReaderTests
{
    private const string Complete = """
        label = "Rider A"                # printed on the review
        time_zone = "Europe/Lisbon"
        sex = "unset"
        mass_kg = 68.0
        experience = "racing"

        [[threshold]]
        from = 2026-01-05
        power_w = 250
        heart_rate_bpm = 168

        [[threshold]]
        from = 2026-03-02
        power_w = 258.5

        [heart_rate]
        rest_bpm = 48
        max_bpm = 188

        [plan]
        week_starts_on = "sunday"
        weekly_hours = 6.5
        low_share = 0.8
        split_by = "session"
        band_cuts_percent = [76, 106]
        starts = 2026-03-02
        weeks = 16
        days = ["tuesday", "wednesday", "thursday", "saturday", "sunday"]

        [plan.limits]
        long_ride_h = 2.25
        high_days_at_most = 1

        [[exception]]
        from = 2026-05-18
        to = 2026-05-24
        kind = "lighter"

        [[exception]]
        from = 2026-04-12
        kind = "event"

        [[exception]]
        from = 2026-06-01
        to = 2026-06-03
        kind = "ill"

        [[hours]]
        from = 2026-05-04
        weekly = 7.5

        [[hours]]
        from = 2026-06-29
        weekly = 9

        [days]
        tuesday = 60
        saturday = 210

        [[fixed]]
        day = "saturday"
        kind = "threshold"
        minutes = 120
        session = "club ride"

        [[session]]
        session = "four by six"
        kind = "high"
        minutes = 60
        blocks = "15 min easy, 4 x 6 min 106-110 %, 3 min easy between, easy to the end"

        [[set_aside]]
        rule = "rest-days"
        until = 2026-06-30
        why = "short commutes count as rest"

        [csv]
        power = "Leistung (W)"
        """;

    [Fact]
    public void A_rider_file_nested_without_end_is_a_mistake()
    {
        var read = RiderFileReader.Read("label = " + new string('[', 5000), "rider.toml");
        Assert.Null(read.Rider);
        Assert.Single(read.Mistakes);
    }

    [Theory]
    [InlineData("label = \"Rider\\")]
    [InlineData("label = \"Rider\\u")]
    [InlineData("label = \"Rider\\u00")]
    [InlineData("label = \"Rider\\U0000000")]
    [InlineData("label = \"\"\"Rider\\")]
    [InlineData("\"lab\\")]
    public void A_rider_file_that_ends_inside_an_escape_is_a_mistake_in_its_line(string toml)
    {
        var read = RiderFileReader.Read("experience = \"regular\"\n" + toml, "rider.toml");
        Assert.Null(read.Rider);
        Assert.Equal(2, Assert.Single(read.Mistakes).Line);
    }

    [Fact]
    public void A_complete_rider_file_is_read()
    {
        var result = RiderFileReader.Read(Complete, "rider.toml");

        Assert.Empty(result.Mistakes);
        var rider = result.Rider!;
        Assert.Equal("Rider A", rider.Label);
        Assert.Equal("Europe/Lisbon", rider.TimeZone?.Id);
        Assert.Equal(Sex.Unset, rider.Sex);
        Assert.Equal(68.0, rider.MassKg);
        Assert.Equal(Experience.Racing, rider.Experience);
        Assert.Equal([new LocalDate(2026, 1, 5), new LocalDate(2026, 3, 2)], rider.Thresholds.Select(t => t.From));
        Assert.Equal([250, 258.5], rider.Thresholds.Select(t => t.Power!.Value.Value));
        Assert.Equal([168.0, null], rider.Thresholds.Select(t => t.HeartRateBpm));
        Assert.Equal((48.0, 188.0), (rider.RestHeartRateBpm, rider.MaxHeartRateBpm));
        Assert.Equal("Leistung (W)", rider.CsvColumns["power"]);
    }

    [Fact]
    public void The_plan_of_a_complete_rider_file_is_read()
    {
        var rider = RiderFileReader.Read(Complete, "rider.toml").Rider!;

        Assert.Equal(IsoDayOfWeek.Sunday, rider.Plan.WeekStartsOn);
        Assert.Equal(6.5, rider.Plan.WeeklyHours);
        Assert.Equal(0.8, rider.Plan.LowShare);
        Assert.Equal(SplitBy.Session, rider.Plan.SplitBy);
        Assert.Equal((76, 106), (rider.Plan.LowerBandCutPercent, rider.Plan.UpperBandCutPercent));
        Assert.Equal(new LocalDate(2026, 3, 2), rider.Plan.Starts);
        Assert.Equal(16, rider.Plan.Weeks);
        Assert.Equal(
            [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday, IsoDayOfWeek.Sunday], rider.Plan.Days.ToArray());
        Assert.Equal(2.25, rider.Plan.LimitOverrides["long_ride_h"]);
        Assert.Equal(1, rider.Plan.LimitOverrides["high_days_at_most"]);
        Assert.Equal(
            [
                new PlanException(new LocalDate(2026, 4, 12), new LocalDate(2026, 4, 12), ExceptionKind.Event),
                new PlanException(new LocalDate(2026, 5, 18), new LocalDate(2026, 5, 24), ExceptionKind.Lighter),
                new PlanException(new LocalDate(2026, 6, 1), new LocalDate(2026, 6, 3), ExceptionKind.Ill),
            ],
            rider.Exceptions.ToArray());
    }

    [Fact]
    public void An_empty_rider_file_is_a_rider_with_defaults()
    {
        var result = RiderFileReader.Read("", "rider.toml");

        Assert.Empty(result.Mistakes);
        Assert.Equal(new Rider().Plan.WeekStartsOn, result.Rider!.Plan.WeekStartsOn);
        Assert.Null(result.Rider.Plan.WeeklyHours);
    }

    [Theory]
    [InlineData("wieght_kg = 3\nmas_kg = 68", 2, 1, "mas_kg", "mass_kg")]
    [InlineData("[plan]\nweekly_hour = 6", 2, 1, "weekly_hour", "weekly_hours")]
    [InlineData("[plan.limits]\nlong_ride_hours = 2", 2, 1, "long_ride_hours", "long_ride_h")]
    [InlineData("[pln]\nweekly_hours = 6", 1, 2, "pln", "plan")]
    [InlineData("[[exceptions]]\nfrom = 2026-05-18", 1, 3, "exceptions", "exception")]
    [InlineData("[[threshold]]\nfrom = 2026-01-05\npower = 250\npower_w = 250", 3, 1, "power", "power_w")]
    [InlineData("[csv]\nheartrate = \"HR\"", 2, 1, "heartrate", "heart_rate")]
    [InlineData("[[sesion]]\nsession = \"a\"", 1, 3, "sesion", "session")]
    [InlineData("[days]\ntuesday = 60\nthurday = 60", 3, 1, "thurday", "thursday")]
    [InlineData("[[hours]]\nfrom = 2026-05-04\nweekly = 6\nweekly_hours = 6", 4, 1, "weekly_hours", null)]
    [InlineData("[plan]\nlong-ride-h = 2", 2, 1, "long-ride-h", null)]
    public void An_unknown_key_is_named_with_its_place_and_the_nearest_known_key(string toml, int line, int column, string key, string? nearest)
    {
        var mistake = RiderFileReader.Read(toml, "rider.toml").Mistakes.Last();

        Assert.Equal((line, column), (mistake.Line, mistake.Column));
        Assert.Contains($"unknown key {key}", mistake.Found, StringComparison.Ordinal);
        Assert.Equal(nearest, mistake.Nearest);
    }

    [Theory]
    [InlineData("label = 3", 1, 9, "3", "label")]
    [InlineData("label = \"\"", 1, 9, "the text \"\"", "label")]
    [InlineData("mass_kg = \"68\"", 1, 11, "the text \"68\"", "mass_kg: a number from 25 to 250 kg")]
    [InlineData("mass_kg = 6800", 1, 11, "6800", "mass_kg: a number from 25 to 250 kg")]
    [InlineData("mass_kg = nan", 1, 11, "NaN", "mass_kg")]
    [InlineData("sex = true", 1, 7, "true", "sex: female, male or unset")]
    [InlineData("experience = \"pro\"", 1, 14, "the text \"pro\"", "experience: new, regular or racing")]
    [InlineData("time_zone = \"Europe/Lisboa\"", 1, 1, "the unknown time zone \"Europe/Lisboa\"", "IANA")]
    [InlineData("threshold = 250", 1, 1, "250", "[[threshold]]")]
    [InlineData("[threshold]\nfrom = 2026-01-05\npower_w = 250", 1, 2, "a table", "[[threshold]]")]
    [InlineData("[[plan]]\nweekly_hours = 6", 1, 3, "a list of tables", "[plan]")]
    [InlineData("[[threshold]]\nfrom = \"2026-01-05\"\npower_w = 250", 2, 8, "the text \"2026-01-05\"", "a date such as 2026-05-18, without quotes")]
    [InlineData("[[threshold]]\nfrom = 2026-01-05T10:00:00\npower_w = 250", 2, 8, "a time of day or a date with a time", "a date")]
    [InlineData("[[threshold]]\npower_w = 250", 1, 3, "a threshold without from", "from")]
    [InlineData("[[threshold]]\nfrom = 2026-01-05", 1, 3, "a threshold without a value", "power_w, heart_rate_bpm or both")]
    [InlineData("[[threshold]]\nfrom = 2026-01-05\npower_w = 2500", 3, 11, "2500", "power_w: a number from 30 to 700 W")]
    [InlineData("[heart_rate]\nrest_bpm = 60\nmax_bpm = 100\n[[threshold]]\nfrom = 2026-01-05\nheart_rate_bpm = 120", 6, 1, "a threshold heart rate outside the rider’s range", "above rest_bpm and at most max_bpm")]
    [InlineData("[heart_rate]\nrest_bpm = 110\nmax_bpm = 100", 3, 1, "max_bpm at or below rest_bpm", "max_bpm above rest_bpm")]
    [InlineData("[plan]\nweek_starts_on = \"mondag\"", 2, 18, "the text \"mondag\"", "monday, tuesday")]
    [InlineData("[plan]\nweekly_hours = 0", 2, 16, "0", "weekly_hours: a number from 0.5 to 60 h")]
    [InlineData("[plan]\nlow_share = 75", 2, 13, "75", "a share: 0.75 is 75 %")]
    [InlineData("[plan]\nweeks = 2.5", 2, 9, "2.5", "a whole number")]
    [InlineData("[plan]\ndays = \"monday\"", 2, 8, "the text \"monday\"", "a list of monday")]
    [InlineData("[plan]\ndays = [\"monday\", \"monday\"]", 2, 19, "the text \"monday\" a second time", "each once")]
    [InlineData("[plan]\ndays = []", 2, 1, "no day to ride on", "at least one weekday")]
    [InlineData("[plan]\nband_cuts_percent = [91, 76]", 2, 22, "[91, 76]", "the lower first")]
    [InlineData("[plan]\nband_cuts_percent = [76]", 2, 22, "[76]", "two numbers")]
    [InlineData("[plan]\nband_cuts_percent = []", 2, 1, "no two numbers", "two numbers")]
    [InlineData("[plan.limits]\nhigh_days_at_most = 1.5", 2, 21, "1.5", "a whole number from 0 to 7 days")]
    [InlineData("[plan.limits]\nhours_watch_margin = 0.4", 2, 1, "hours_watch_margin above hours_broken_margin", "hours_watch_margin at most hours_broken_margin (0.3)")]
    [InlineData("[plan]\nlow_share = 0.8\n[plan.limits]\nintended_low_share = 0.7", 4, 1, "the intended low share a second time", "low_share in [plan] or intended_low_share here")]
    [InlineData("[[exception]]\nfrom = 2026-05-24\nto = 2026-05-18\nkind = \"lighter\"", 3, 1, "to before from", "not before from")]
    [InlineData("[[exception]]\nfrom = 2026-05-24\nkind = \"light\"", 3, 8, "the text \"light\"", "lighter, event, away or ill")]
    [InlineData("[[exception]]\nfrom = 2026-05-24", 1, 3, "an exception without kind", "lighter, event, away or ill")]
    [InlineData("[[hours]]\nfrom = 2026-05-04", 1, 3, "planned hours without weekly", "weekly: hours a week")]
    [InlineData("[[hours]]\nfrom = 2026-05-04\nweekly = 70", 3, 10, "70", "from 0.5 to 60 h")]
    [InlineData("[[hours]]\nfrom = 2026-05-04\nweekly = 7\n[[hours]]\nfrom = 2026-05-04\nweekly = 8", 5, 1, "the same date as the hours before", "each date once")]
    [InlineData("[days]\ntuesday = 61.5", 2, 11, "61.5", "tuesday: a whole number from 0 to 1440 min")]
    [InlineData("[days]", 1, 2, "no day with minutes", "at least one weekday")]
    [InlineData("[[fixed]]\nday = \"saturday\"\nkind = \"rest\"\nminutes = 60", 3, 8, "the text \"rest\"", "kind: recovery, endurance, long, threshold or high")]
    [InlineData("[[fixed]]\nkind = \"high\"\nminutes = 60", 1, 3, "a fixed ride without day", "its weekday")]
    [InlineData("[[session]]\nsession = \"a\"\nkind = \"high\"\nminutes = 60\nblocks = \"15 min eazy\"", 5, 18, "eazy in blocks", "easy, very easy")]
    [InlineData("[[session]]\nsession = \"a\"\nkind = \"high\"\nminutes = 60", 1, 3, "a session without blocks", "what to ride")]
    [InlineData("[[set_aside]]\nrule = \"rest-day\"\nuntil = 2026-06-30\nwhy = \"x\"", 2, 8, "the text \"rest-day\"", "rest-days")]
    [InlineData("[[set_aside]]\nrule = \"rest-days\"\nuntil = 2026-06-30", 1, 3, "a rule set aside without why", "the reason")]
    [InlineData("[csv]\npower = 3", 2, 9, "3", "the column’s header")]
    public void A_wrong_value_is_named_with_its_place_and_what_is_allowed(string toml, int line, int column, string found, string allowed)
    {
        var mistake = Assert.Single(RiderFileReader.Read(toml, "rider.toml", RuleBook.Standard.Ids).Mistakes);

        Assert.Equal((line, column, found), (mistake.Line, mistake.Column, mistake.Found));
        Assert.Contains(allowed, mistake.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_rider_file_says_of_days_and_sessions_is_read()
    {
        var rider = RiderFileReader.Read(Complete, "rider.toml").Rider!;

        Assert.Equal([new HoursEntry(new LocalDate(2026, 5, 4), 7.5), new HoursEntry(new LocalDate(2026, 6, 29), 9)], rider.Hours.ToArray());
        Assert.Equal([(IsoDayOfWeek.Tuesday, 60), (IsoDayOfWeek.Saturday, 210)], rider.MinutesFree!.Select(d => (d.Key, d.Value)));
        Assert.Equal(new FixedRide(IsoDayOfWeek.Saturday, PlannedKind.Threshold, 120, "club ride"), Assert.Single(rider.FixedRides));
        var session = Assert.Single(rider.Sessions);
        Assert.Equal(("four by six", PlannedKind.High, 60), (session.Session, session.Kind, session.Minutes));
        Assert.Equal("15 min easy, 4 x 6 min 106-110 %, 3 min easy between, easy to the end", session.Blocks.ToString());
        Assert.Equal(new SetAsideRule("rest-days", new LocalDate(2026, 6, 30), "short commutes count as rest"), Assert.Single(rider.SetAside));
    }

    [Fact]
    public void Without_a_table_of_days_no_day_has_minutes_and_the_cuts_are_those_of_the_zones()
    {
        var rider = RiderFileReader.Read("", "rider.toml").Rider!;

        Assert.Null(rider.MinutesFree);
        Assert.Equal((76.0, 106.0), (rider.Plan.LowerBandCutPercent, rider.Plan.UpperBandCutPercent));
    }

    [Fact]
    public void Every_mistake_of_several_blocks_and_tables_is_told_at_once()
    {
        const string Toml = """
            [[session]]
            session = "a"
            kind = "hihg"
            minutes = 60
            blocks = "15 min eazy, 4 x 6 mn 95 %"
            [[set_aside]]
            rule = "rests"
            until = 2026-13-01
            """;

        var mistakes = RiderFileReader.Read(Toml, "rider.toml", RuleBook.Standard.Ids).Mistakes;

        Assert.Equal([(3, 8), (5, 18), (5, 30), (6, 3), (7, 8), (8, 9)], mistakes.Select(m => (m.Line, m.Column)));
        Assert.Equal("high", mistakes[0].Nearest);
    }

    [Theory]
    [InlineData("2026-01-05", "the same date as the threshold before")]
    [InlineData("2025-12-01", "a date before that of the threshold before")]
    public void Thresholds_out_of_order_or_twice_on_a_date_are_named(string second, string found)
    {
        var toml = $"[[threshold]]\nfrom = 2026-01-05\npower_w = 250\n[[threshold]]\nfrom = {second}\npower_w = 260";

        var mistake = Assert.Single(RiderFileReader.Read(toml, "rider.toml", RuleBook.Standard.Ids).Mistakes);

        Assert.Equal((5, 1, found), (mistake.Line, mistake.Column, mistake.Found));
    }

    [Fact]
    public void Every_mistake_is_reported_at_once_in_the_order_of_the_file()
    {
        const string Toml = """
            label = 3
            colour = "rust"
            [plan]
            weekly_hours = "six"
            weekly_hours = 6
            [plan]
            weeks = 4
            """;

        var result = RiderFileReader.Read(Toml, "rider.toml");

        Assert.Null(result.Rider);
        Assert.Equal([1, 2, 4, 5, 6], result.Mistakes.Select(m => m.Line));
    }

    [Theory]
    [InlineData("label = \"Rider A\nmass_kg = 68", 1)]
    [InlineData("mass_kg = = 68", 1)]
    [InlineData("label = \"A\"\nmass_kg 68", 2)]
    [InlineData("[plan\nweekly_hours = 6", 1)]
    public void A_line_that_is_not_TOML_is_a_mistake_at_its_line(string toml, int line)
    {
        var result = RiderFileReader.Read(toml, "rider.toml");

        Assert.Null(result.Rider);
        Assert.Equal(line, result.Mistakes[0].Line);
        Assert.True(result.Mistakes[0].Column >= 1);
    }

    [Theory]
    [InlineData("[plan]\nweekly_hours = 6,5\n", 2, "6,5", "weekly_hours: a number with a point, such as 6.5")]
    [InlineData("[[threshold]]\nfrom = 2026-13-45\npower_w = 250\n", 2, "2026-13-45, which is no date", "from: a date such as 2026-05-18, without quotes")]
    [InlineData("label = Rider A\n", 1, "Rider A", "label: text between quotation marks, such as \"Rider A\"")]
    [InlineData("mass_kg =\n", 1, "nothing after =", "mass_kg: a value, or # before the line")]
    [InlineData("label = \"A\"\nmass_kg 68\n", 2, "mass_kg 68, which is not understood", "a line such as label = \"Rider A\", a heading such as [plan], or # and a comment")]
    public void A_slip_is_one_mistake_in_plain_words(string toml, int line, string found, string allowed)
    {
        var mistake = Assert.Single(RiderFileReader.Read(toml, "rider.toml", RuleBook.Standard.Ids).Mistakes);
        Assert.Equal((line, found, allowed), (mistake.Line, mistake.Found, mistake.Allowed));
    }

    [Theory]
    [InlineData("GMT+1", null)]
    [InlineData("UTC+01:00", null)]
    [InlineData("Europe/Lisboa", "Europe/Lisbon")]
    public void An_offset_is_answered_with_a_place_and_never_with_another_offset(string zone, string? nearest)
    {
        var mistake = Assert.Single(RiderFileReader.Read($"time_zone = \"{zone}\"\n", "rider.toml").Mistakes);
        Assert.Equal(nearest, mistake.Nearest);
        Assert.Contains("such as Europe/Lisbon", mistake.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Dotted_keys_and_inline_tables_are_the_same_as_tables()
    {
        const string Toml = """
            heart_rate.rest_bpm = 48
            heart_rate.max_bpm = 188
            plan = { weekly_hours = 7, limits = { long_ride_h = 2 } }
            """;

        var result = RiderFileReader.Read(Toml, "rider.toml");

        Assert.Empty(result.Mistakes);
        Assert.Equal(188, result.Rider!.MaxHeartRateBpm);
        Assert.Equal(2, result.Rider.Plan.LimitOverrides["long_ride_h"]);
    }

    [Fact]
    public void Every_limit_can_be_given_by_its_name()
    {
        foreach (var limit in LimitCatalogue.All)
        {
            var value = limit.Whole ? Math.Ceiling((limit.Least + limit.Most) / 2) : (limit.Least + limit.Most) / 2;
            var written = FormattableString.Invariant($"[plan.limits]\n{limit.Name} = {value}");
            var result = RiderFileReader.Read(written, "rider.toml");

            var ordered = result.Mistakes.All(m => m.Found.Contains(" above ", StringComparison.Ordinal));
            Assert.True(ordered, $"{limit.Name}: {string.Join("; ", result.Mistakes.Select(m => m.Found))}");
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Any_damage_to_a_rider_file_is_reported_and_never_thrown(int seed)
    {
        var random = new Random(seed);
        for (var round = 0; round < 400; round++)
        {
            var letters = Complete.ToCharArray();
            for (var i = 0; i < 3; i++)
                letters[random.Next(letters.Length)] = "\"[]={}#\n,.x7-"[random.Next(13)];
            var result = RiderFileReader.Read(new string(letters), "rider.toml");
            Assert.Equal(result.Rider is null, !result.Mistakes.IsEmpty);
        }
    }
}
