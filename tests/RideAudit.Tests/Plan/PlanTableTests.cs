using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;

namespace RideAudit.Tests.Plan;

public class PlanTableTests
{
    private const string Week = """
        date,kind,minutes,session,note,stress
        2026-05-18,rest,,,,
        2026-05-19,high,75,four fours,"out of town, on the hill",72.5
        2026-05-20,endurance,60,,,
        2026-05-23,event,,Round the lake,,
        """;

    [Fact]
    public void A_plan_table_is_read_as_it_stands()
    {
        var sheet = PlanTableReader.Read(Week, "plan.csv");

        Assert.Empty(sheet.Mistakes);
        var sessions = sheet.Rows.Select(r => r.Session!).ToList();
        Assert.Equal([PlannedKind.Rest, PlannedKind.High, PlannedKind.Endurance, PlannedKind.Event], sessions.Select(s => s.Kind));
        Assert.Equal([null, 75, 60, null], sessions.Select(s => s.Minutes));
        Assert.Equal((new LocalDate(2026, 5, 19), "four fours", "out of town, on the hill", 72.5), (sessions[1].Date, sessions[1].Session, sessions[1].Note, sessions[1].Stress!.Value));
        Assert.All(sessions, s => Assert.False(s.MadeHere));
    }

    [Theory]
    [InlineData("date,kind,minutes", true)]
    [InlineData("\uFEFFDate;KIND;Minutes;coach", true)]
    [InlineData("minutes,note,kind,session,date", true)]
    [InlineData("date,kind,minutes,start,session", true)]
    [InlineData("date,start,kind,minutes", false)]
    [InlineData("date,kind,minutes,file", false)]
    [InlineData("date,minutes,kind,rating,note", false)]
    [InlineData("date,minutes,kind,session,average power", false)]
    [InlineData("date,minutes", false)]
    [InlineData("seconds,power", false)]
    public void A_plan_table_is_told_from_a_log_by_its_header(string header, bool plan) =>
        Assert.Equal(plan, PlanTableReader.IsPlanHeader(header.Split(',', ';')));

    [Theory]
    [InlineData("2026-05-19,hihg,75,,,", "kind", 2, "hihg", "rest, recovery, endurance, long, threshold, high or event", "high")]
    [InlineData("19 May,high,75,,,", "date", 1, "19 May", "a date such as 2026-05-18", null)]
    [InlineData("2026-02-30,high,75,,,", "date", 1, "2026-02-30", "a date", null)]
    [InlineData("05/06/2026,high,75,,,", "date", 1, "05/06/2026, which could be two days", "a date", null)]
    [InlineData("2026-05-19,high,,,,", "minutes", 3, "an empty cell", "whole minutes", null)]
    [InlineData("2026-05-19,high,62.5,,,", "minutes", 3, "62.5", "whole minutes", null)]
    [InlineData("2026-05-19,rest,30,,,", "minutes", 3, "30", "nothing on a rest day", null)]
    [InlineData("2026-05-19,high,60,,,lots", "stress", 6, "lots", "points", null)]
    public void A_broken_row_is_named_with_line_and_column_and_stops_nothing(string row, string column, int cell, string found, string allowed, string? nearest)
    {
        var sheet = PlanTableReader.Read($"date,kind,minutes,session,note,stress\n{row}\n\n2026-05-20,endurance,60,,,\n", "plan.csv");

        var mistake = Assert.Single(sheet.Mistakes);
        Assert.Equal(("plan.csv", 2, column, cell, found, nearest), (mistake.File, mistake.Line, mistake.Column, mistake.Cell, mistake.Found, mistake.Nearest));
        Assert.Contains(allowed, mistake.Allowed, StringComparison.Ordinal);
        Assert.Contains(sheet.Rows, r => r.Session?.Date == new LocalDate(2026, 5, 20));
    }

    [Fact]
    public void Blocks_that_cannot_be_read_are_named_and_the_session_stays_planned()
    {
        var sheet = PlanTableReader.Read("date,kind,minutes,blocks\n2026-05-19,high,75,15 min eazy", "plan.csv");

        Assert.Equal(("eazy at letter 8", "easy"), (Assert.Single(sheet.Mistakes).Found, sheet.Mistakes[0].Nearest));
        Assert.Null(Assert.Single(sheet.Rows).Session!.Blocks);
    }

    [Theory]
    [InlineData("", "no header of a plan table")]
    [InlineData("date,minutes\n2026-05-19,60", "no header of a plan table")]
    public void A_text_that_is_no_plan_table_says_so(string text, string found) =>
        Assert.Equal(found, Assert.Single(PlanTableReader.Read(text, "plan.csv").Mistakes).Found);

    [Theory]
    [InlineData("dd.MM.yyyy", ';')]
    [InlineData("dd/MM/yyyy", ';')]
    [InlineData("d.M.yy", ';')]
    [InlineData("M/d/yyyy", ',')]
    [InlineData("dd/MM/yyyy", ',')]
    [InlineData("d-M-yyyy", ';')]
    [InlineData("yyyy-MM-dd", '\t')]
    [InlineData("yyyy/MM/dd", ',')]
    public void A_plan_written_and_saved_by_a_spreadsheet_and_read_again_is_the_same_plan(string dates, char separator)
    {
        var (written, _) = PlanTableWriter.Update(PlanSheet.New("plan.csv"), Laid, Monday, Monday.PlusDays(6));
        var saved = SavedBySpreadsheet(PlanTableWriter.Write(written), dates, separator);

        var read = PlanTableReader.Read(saved, "plan.csv");

        Assert.Empty(read.Mistakes);
        Assert.Equal(written.Rows.Select(r => Plain(r.Session!)), read.Rows.Select(r => Plain(r.Session!)));
        Assert.All(read.Rows, r => Assert.True(r.Session!.MadeHere));
    }

    [Fact]
    public void A_week_of_dates_that_could_all_be_two_days_is_not_guessed_where_the_separator_does_not_say()
    {
        const string Text = "date,kind,minutes\n01/05/2026,high,60\n02/05/2026,endurance,60";

        Assert.Equal(2, PlanTableReader.Read(Text, "plan.csv").Mistakes.Length);
        Assert.Equal(new LocalDate(2026, 5, 2), PlanTableReader.Read(Text.Replace(',', ';'), "plan.csv").Rows[1].Session!.Date);
    }

    [Fact]
    public void Unknown_columns_blank_and_broken_rows_come_back_as_they_were()
    {
        const string Text = "coach;date;kind;minutes;weather\r\n\"A; B\";2026-05-19;high;75;\"rain, \"\"heavy\"\"\"\r\n;;;;\r\n;2026-05-20;tired;;\r\n";

        Assert.Equal(Text, PlanTableWriter.Write(PlanTableReader.Read(Text, "plan.csv")));
    }

    [Fact]
    public void A_byte_order_mark_and_line_feeds_come_back()
    {
        const string Text = "\uFEFFdate,kind,minutes\n2026-05-19,high,75\n";

        Assert.Equal(Text, PlanTableWriter.Write(PlanTableReader.Read(Text, "plan.csv")));
    }

    [Fact]
    public void Laying_out_again_replaces_the_programs_rows_and_never_one_made_by_hand()
    {
        var (sheet, _) = PlanTableWriter.Update(PlanSheet.New("plan.csv"), Laid, Monday, Monday.PlusDays(6));
        var byHand = PlanTableWriter.Write(sheet).Replace("2026-05-20,endurance,60", "2026-05-20,endurance,90", StringComparison.Ordinal);
        ImmutableArray<PlannedSession> anew =
        [
            new() { Date = Monday.PlusDays(1), Kind = PlannedKind.Threshold, Minutes = 60 },
            new() { Date = Monday.PlusDays(2), Kind = PlannedKind.Recovery, Minutes = 40 },
            new() { Date = Monday.PlusDays(9), Kind = PlannedKind.Recovery, Minutes = 40 },
        ];

        var (again, leftOut) = PlanTableWriter.Update(PlanTableReader.Read(byHand, "plan.csv"), anew, Monday, Monday.PlusDays(6));

        Assert.Equal(
            ["2026-05-19 Threshold 60 True", "2026-05-20 Endurance 90 False"],
            again.Rows.Select(r => $"{r.Session!.Date:uuuu-MM-dd} {r.Session.Kind} {r.Session.Minutes} {r.Session.MadeHere}"));
        Assert.Equal(Monday.PlusDays(2), Assert.Single(leftOut).Date);
        Assert.Equal(Plains(again), Plains(PlanTableReader.Read(PlanTableWriter.Write(again), "plan.csv")));
    }

    [Fact]
    public void Rows_outside_the_span_stay_and_new_ones_stand_in_order_of_date()
    {
        var hand = PlanTableReader.Read("date,kind,minutes,weather\n2026-05-11,high,60,sun\n2026-05-30,long,180,sun\n", "plan.csv");

        var (sheet, _) = PlanTableWriter.Update(hand, Laid, Monday, Monday.PlusDays(6));

        Assert.Equal(sheet.Rows.Select(r => r.Session!.Date).Order(), sheet.Rows.Select(r => r.Session!.Date));
        Assert.Equal("weather", sheet.Header[3]);
        Assert.Equal("sun", sheet.Rows[^1].Cells[3]);
        Assert.Equal(Laid.Length + 2, sheet.Rows.Length);
    }

    [Fact]
    public void Several_tables_are_put_together_and_a_session_written_twice_is_named()
    {
        var may = PlanTableReader.Read("date,kind,minutes,session\n2026-05-19,high,75,hills\n2026-05-20,endurance,30,\n2026-05-20,endurance,30,\n", "may.csv");
        var june = PlanTableReader.Read("date,kind,minutes,session\n2026-05-19,high,75,Hills\n2026-05-20,endurance,30,\n2026-06-02,rest,,\n2026-06-02,high,60,\n", "june.csv");

        var table = PlanTable.Merge([may, june]);

        Assert.Equal(4, table.Sessions.Length);
        Assert.Equal(2, table.On(new LocalDate(2026, 5, 20)).Count());
        Assert.Equal(
            [
                ("june.csv", 2, "\"Hills\" on 2026-05-19 a second time"),
                ("june.csv", 3, "endurance on 2026-05-20 a second time"),
                ("june.csv", 5, "rest and riding on 2026-06-02"),
            ],
            table.Mistakes.Select(m => (m.File, m.Line, m.Found)));
    }

    private static readonly LocalDate Monday = new(2026, 5, 18);

    private static readonly ImmutableArray<PlannedSession> Laid =
    [
        new() { Date = Monday, Kind = PlannedKind.Rest },
        new()
        {
            Date = Monday.PlusDays(1), Kind = PlannedKind.High, Minutes = 75, Session = "four fours", Stress = 71.46,
            Note = "15 min easy; 4 × 4 min at 270 to 280 W, \"steady\"", Blocks = SessionBlocks.Read("15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end", out _),
        },
        new() { Date = Monday.PlusDays(2), Kind = PlannedKind.Endurance, Minutes = 60 },
        new() { Date = Monday.PlusDays(5), Kind = PlannedKind.Event, Session = "Round the lake" },
    ];

    private static string Plain(PlannedSession s) => $"{s.Date} {s.Kind} {s.Minutes} {s.Session} {s.Note} {s.Stress} {s.Blocks}";

    private static IEnumerable<string> Plains(PlanSheet sheet) => sheet.Rows.Select(r => Plain(r.Session!));

    /// <summary>What spreadsheets do to a table: dates in their own order, a decimal comma where the separator is a semicolon, a byte-order mark.</summary>
    private static string SavedBySpreadsheet(string text, string dates, char separator)
    {
        var sheet = PlanTableReader.Read(text, "plan.csv");
        var rows = sheet.Rows.Select(r => r with { Cells = [.. r.Cells.Select((c, at) => Saved(c, at, r))] });
        return PlanTableWriter.Write(sheet with { Separator = separator, ByteOrderMark = true, Rows = [.. rows] });

        string Saved(string cell, int at, PlanRow row) => at switch
        {
            0 => row.Session!.Date.ToDateOnly().ToString(dates, System.Globalization.CultureInfo.InvariantCulture),
            5 when separator == ';' => cell.Replace('.', ','),
            _ => cell,
        };
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_day_of_rest_by_the_program_gives_way_to_a_ride_made_by_hand_in_any_table_and_the_other_way_round(bool programFirst)
    {
        var monday = new LocalDate(2026, 5, 18);
        var (made, _) = PlanTableWriter.Update(
            PlanSheet.New("plan.csv"),
            [new PlannedSession { Date = monday, Kind = PlannedKind.Rest }, new PlannedSession { Date = monday.PlusDays(1), Kind = PlannedKind.High, Minutes = 60, Session = "four fours" }],
            monday,
            monday.PlusDays(6));
        made = PlanTableReader.Read(PlanTableWriter.Write(made), "plan.csv");
        var byHand = PlanTableReader.Read("date,kind,minutes,session\n2026-05-18,endurance,60,to the coast\n2026-05-19,rest,,\n", "club.csv");

        var table = PlanTable.Merge(programFirst ? [made, byHand] : [byHand, made]);

        Assert.Empty(table.Mistakes);
        Assert.Equal("to the coast", Assert.Single(table.On(monday)).Session);
        Assert.True(Assert.Single(table.On(monday.PlusDays(1))).IsRest);
    }

    [Fact]
    public void Rest_and_riding_made_by_hand_on_one_day_are_a_mistake_still() =>
        Assert.Contains("rest and riding on 2026-05-18", Assert.Single(PlanTable.Merge(
            [PlanTableReader.Read("date,kind,minutes,session\n2026-05-18,endurance,60,to the coast\n2026-05-18,rest,,\n", "club.csv")]).Mistakes).Found, StringComparison.Ordinal);

    [Theory]
    [InlineData("lighter", ExceptionKind.Lighter)]
    [InlineData("Away", ExceptionKind.Away)]
    [InlineData("ill", ExceptionKind.Ill)]
    [InlineData("event", ExceptionKind.Event)]
    public void A_row_says_what_its_day_is_excepted_for(string word, ExceptionKind kind)
    {
        var table = PlanTable.Merge([PlanTableReader.Read($"date,kind,minutes,exception\n2026-05-18,endurance,60,{word}\n2026-05-19,endurance,60,\n", "plan.csv")]);

        Assert.Empty(table.Mistakes);
        var calendar = new PlanCalendar(new Rider(), table);
        Assert.Equal((kind, null), (calendar.KindOn(new LocalDate(2026, 5, 18)), calendar.KindOn(new LocalDate(2026, 5, 19))));
    }

    [Fact]
    public void An_exception_that_is_none_is_named_and_the_row_stands()
    {
        var sheet = PlanTableReader.Read("date,kind,minutes,exception\n2026-05-18,endurance,60,ligther\n", "plan.csv");

        var mistake = Assert.Single(sheet.Mistakes);
        Assert.Equal(("exception", "ligther", "lighter, event, away and ill, or nothing", "lighter"), (mistake.Column, mistake.Found, mistake.Allowed, mistake.Nearest));
        Assert.Equal(60, sheet.Rows.Single().Session!.Minutes);
    }
}
