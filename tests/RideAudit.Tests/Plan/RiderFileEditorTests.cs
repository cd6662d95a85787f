using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Units;

namespace RideAudit.Tests.Plan;

public class RiderFileEditorTests
{
    private static readonly LocalDate FirstRide = new(2026, 2, 3);

    private const string Written = """
        # Rider Ä's own file, kept by hand
        label = "Rider Ä"   # shown
        time_zone='Europe/Lisbon'
        mass_kg = 68.0      # after the holidays

        # tests so far
        [[threshold]]
        from = 2026-01-05
        power_w = 240

        [[threshold]]
        from = 2026-03-26   # ramp, windy
        power_w    =   250
        heart_rate_bpm = 168

        [plan]
        weekly_hours = 6.5  # until summer
        days = ["tuesday",
          "saturday"]       # club days

        [plan.limits]
        long_ride_h = 2.5   # the doctor said so

        [[exception]]
        from = 2026-05-18
        to = 2026-05-24
        kind = "lighter"
        # booked already
        [[exception]]
        from = 2026-04-01
        kind = "event"
        """;

    [Fact]
    public void An_edit_of_nothing_leaves_every_byte() =>
        Assert.Equal(Written, RiderFileEditor.Apply(Written, new RiderFileEdit(), FirstRide));

    [Fact]
    public void A_column_of_CSV_files_is_named_changed_and_taken_out()
    {
        var named = Columns(Written, ("heart_rate", "Puls"), ("power", "Leistung (W)"));
        Assert.Equal(Written + "\n\n[csv]\nheart_rate = \"Puls\"\npower = \"Leistung (W)\"\n", named);
        Assert.Equal("Leistung (W)", RiderFileReader.Read(named, "rider.toml").Rider!.CsvColumns["power"]);
        Assert.Equal(named, Columns(named, ("power", "Leistung (W)")));
        var without = Columns(named, ("power", null));
        Assert.Equal(["heart_rate"], RiderFileReader.Read(without, "rider.toml").Rider!.CsvColumns.Keys);
        Assert.StartsWith(Written, without, StringComparison.Ordinal);

        static string Columns(string toml, params (string Channel, string? Header)[] columns) => RiderFileEditor.Apply(
            toml,
            new RiderFileEdit { CsvColumns = columns.ToImmutableSortedDictionary(c => c.Channel, c => new RiderFileEdit.Answer<string>(true, c.Header)) },
            FirstRide);
    }

    [Fact]
    public void Answers_equal_to_what_the_file_says_leave_every_byte()
    {
        var rider = RiderFileReader.Read(Written, "rider.toml").Rider!;
        var edit = new RiderFileEdit
        {
            Label = rider.Label,
            TimeZone = rider.TimeZone!.Id,
            Sex = rider.Sex,
            MassKg = rider.MassKg,
            Experience = rider.Experience,
            ThresholdFrom = rider.Thresholds[^1].From,
            ThresholdPowerW = rider.Thresholds[^1].Power!.Value.Value,
            ThresholdHeartRateBpm = rider.Thresholds[^1].HeartRateBpm,
            WeekStartsOn = rider.Plan.WeekStartsOn,
            WeeklyHours = rider.Plan.WeeklyHours,
            Days = rider.Plan.Days,
            Exceptions = rider.Exceptions,
        };

        Assert.Equal(Written, RiderFileEditor.Apply(Written, edit, FirstRide));
    }

    [Fact]
    public void A_changed_value_changes_its_own_characters_only()
    {
        var edited = RiderFileEditor.Apply(Written, new RiderFileEdit { MassKg = 66.5, WeeklyHours = 7, Label = "Rider \"B\"" }, FirstRide);

        Assert.Equal(
            Written.Replace("68.0", "66.5").Replace("6.5  # until", "7  # until").Replace("\"Rider Ä\"", "\"Rider \\\"B\\\"\""),
            edited);
    }

    [Fact]
    public void A_new_threshold_goes_in_its_place_and_the_older_ones_stay()
    {
        var between = RiderFileEditor.Apply(
            Written, new RiderFileEdit { ThresholdFrom = new LocalDate(2026, 2, 1), ThresholdPowerW = 245 }, FirstRide);

        Assert.Equal(
            Written.Replace("power_w = 240\n", "power_w = 240\n\n[[threshold]]\nfrom = 2026-02-01\npower_w = 245\n"),
            between);
        Assert.Equal([240.0, 245.0, 250.0], Read(between).Thresholds.Select(t => t.Power!.Value.Value));
    }

    [Fact]
    public void Without_a_date_the_latest_threshold_is_changed() =>
        Assert.Equal(
            Written.Replace("power_w    =   250", "power_w    =   256"),
            RiderFileEditor.Apply(Written, new RiderFileEdit { ThresholdPowerW = 256 }, FirstRide));

    [Fact]
    public void A_first_threshold_is_in_force_from_the_first_rides_date()
    {
        foreach (var text in new[] { "", "label = \"Rider A\"\n", Template() })
        {
            var rider = Read(RiderFileEditor.Apply(text, new RiderFileEdit { ThresholdPowerW = 250 }, FirstRide));

            Assert.Equal(new ThresholdEntry(FirstRide, new Watts(250), null), Assert.Single(rider.Thresholds));
        }
    }

    [Fact]
    public void In_a_new_file_an_answer_stands_below_the_question_it_answers()
    {
        var edited = RiderFileEditor.Apply(
            Template(), new RiderFileEdit { TimeZone = "Europe/Oslo", RestHeartRateBpm = 47, WeeklyHours = 8, ThresholdPowerW = 231 }, FirstRide);

        var lines = edited.Split('\n').ToList();
        Assert.StartsWith("# time_zone", lines[lines.IndexOf("time_zone = \"Europe/Oslo\"") - 1]);
        Assert.StartsWith("# rest_bpm", lines[lines.IndexOf("rest_bpm = 47") - 1]);
        Assert.StartsWith("# weekly_hours", lines[lines.IndexOf("weekly_hours = 8") - 1]);
        Assert.True(lines.IndexOf("[[threshold]]") < lines.IndexOf("[heart_rate]"));
        Assert.All(Template().Split('\n'), line => Assert.Contains(line, lines));
    }

    [Fact]
    public void What_was_answered_and_taken_back_leaves_the_new_file_as_it_was()
    {
        var answered = RiderFileEditor.Apply(Template(), new RiderFileEdit { MassKg = 61, WeeklyHours = 8 }, FirstRide);
        var takenBack = RiderFileEditor.Apply(
            answered,
            new RiderFileEdit { MassKg = RiderFileEdit.Answer<double?>.Nothing, WeeklyHours = RiderFileEdit.Answer<double?>.Nothing },
            FirstRide);

        Assert.Equal(Template(), takenBack);
    }

    [Fact]
    public void A_value_taken_out_stays_as_a_comment_with_what_was_said_of_it()
    {
        var edited = RiderFileEditor.Apply(Written, new RiderFileEdit { MassKg = RiderFileEdit.Answer<double?>.Nothing, Days = [] }, FirstRide);

        Assert.Equal(
            Written.Replace("mass_kg = 68.0 ", "# mass_kg = 68.0 ").Replace("days = [", "# days = [").Replace("  \"saturday\"", "#   \"saturday\""),
            edited);
        Assert.Null(Read(edited).MassKg);
        Assert.Empty(Read(edited).Plan.Days);
    }

    [Fact]
    public void Excepted_days_are_added_changed_and_taken_out_and_the_others_keep_their_lines()
    {
        var edited = RiderFileEditor.Apply(
            Written,
            new RiderFileEdit
            {
                Exceptions =
                [
                    new(new LocalDate(2026, 4, 1), new LocalDate(2026, 4, 1), ExceptionKind.Event),
                    new(new LocalDate(2026, 5, 18), new LocalDate(2026, 5, 26), ExceptionKind.Away),
                    new(new LocalDate(2026, 7, 6), new LocalDate(2026, 7, 12), ExceptionKind.Lighter),
                ],
            },
            FirstRide);

        Assert.Equal(
            Written.Replace("2026-05-24\nkind = \"lighter\"", "2026-05-26\nkind = \"away\"")
                + "\n\n[[exception]]\nfrom = 2026-07-06\nto = 2026-07-12\nkind = \"lighter\"\n",
            edited);
        var fewer = RiderFileEditor.Apply(Written, new RiderFileEdit { Exceptions = [] }, FirstRide);
        Assert.Empty(Read(fewer).Exceptions);
        Assert.Contains("# booked already", fewer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heart_rate = { rest_bpm = 48 }\n")]
    [InlineData("heart_rate = {}\n")]
    [InlineData("heart_rate.rest_bpm = 48\nlabel = \"x\"\n")]
    [InlineData("label = \"x\"\n[plan.limits]\nlong_ride_h = 2.5\n")]
    [InlineData("[csv]\npower = \"Leistung\"")]
    [InlineData("label = \"x\"\r\n\r\n[plan]\r\n# hours\r\n")]
    public void However_a_table_is_written_the_answer_is_read_back(string text)
    {
        var edited = RiderFileEditor.Apply(text, new RiderFileEdit { MaxHeartRateBpm = 190, WeeklyHours = 9, MassKg = 70, ThresholdPowerW = 222 }, FirstRide);

        var rider = Read(edited);
        Assert.Equal((190.0, 9.0, 70.0), (rider.MaxHeartRateBpm!.Value, rider.Plan.WeeklyHours!.Value, rider.MassKg!.Value));
        Assert.Equal(222, Assert.Single(rider.Thresholds).Power!.Value.Value);
        Assert.Equal(text.Contains('\r'), edited.Contains("\r\n", StringComparison.Ordinal));
        Assert.DoesNotContain("\n", text.Contains('\r') ? edited.Replace("\r\n", "") : "", StringComparison.Ordinal);
    }

    [Fact]
    public void Members_of_an_inline_table_are_taken_out_with_their_commas()
    {
        const string Inline = "heart_rate = { rest_bpm = 48, max_bpm = 190 }\n";
        var first = RiderFileEditor.Apply(Inline, new RiderFileEdit { RestHeartRateBpm = RiderFileEdit.Answer<double?>.Nothing }, FirstRide);
        var last = RiderFileEditor.Apply(Inline, new RiderFileEdit { MaxHeartRateBpm = RiderFileEdit.Answer<double?>.Nothing }, FirstRide);

        Assert.Equal((null, 190.0), (Read(first).RestHeartRateBpm, Read(first).MaxHeartRateBpm!.Value));
        Assert.Equal((48.0, null), (Read(last).RestHeartRateBpm!.Value, Read(last).MaxHeartRateBpm));
    }

    [Fact]
    public void A_text_that_is_not_TOML_comes_back_as_it_was() =>
        Assert.Equal("label = \"x\nmass", RiderFileEditor.Apply("label = \"x\nmass", new RiderFileEdit { MassKg = 70 }, FirstRide));

    private static string Template() => RiderFileTemplate.Write(new RiderFileAnswers { ThresholdFrom = FirstRide });

    private static Rider Read(string text)
    {
        var result = RiderFileReader.Read(text, "rider.toml");
        Assert.Empty(result.Mistakes);
        return result.Rider!;
    }
}
