using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Cli.Tests.Output;

public class PlanTargetTests
{
    private const string ByHand = "date;kind;minutes;session;colour\r\n2026-06-23;threshold;60;my own;red\r\n2026-07-01;long;180;;\r\n";

    [Fact]
    public void A_new_table_holds_a_row_a_session_and_a_row_a_day_of_rest()
    {
        using var folder = new TempFolder();
        Assert.Null(Write(folder, PlanTable.Empty));
        var sheet = Read(folder);
        Assert.Empty(sheet.Mistakes);
        Assert.Equal(
            ["Rest 22", "High 23", "Recovery 24", "Endurance 24", "Rest 25", "Rest 26", "Event 27", "Rest 28"],
            sheet.Rows.Select(r => $"{r.Session!.Kind} {r.Session.Date.Day}"));
        Assert.All(sheet.Rows, r => Assert.True(r.Session!.MadeHere));
        Assert.Equal("15 min easy, 5 x 5 min 107-111 %, 4 min easy between, easy to the end", sheet.Rows[1].Session!.Blocks!.ToString());
    }

    [Fact]
    public void A_row_made_by_hand_stays_to_the_letter_and_its_day_is_told()
    {
        using var folder = new TempFolder();
        folder.Write("plan.csv", ByHand);
        var said = Write(folder, PlanTable.Merge([PlanTableReader.Read(ByHand, "plan.csv")]));
        Assert.Equal("Rows made by hand stay as they are in the plan table: Tue 23.", said?.Replace('\u00A0', ' '));
        var text = File.ReadAllText(folder.At("plan.csv"));
        Assert.Contains("\r\n2026-06-23;threshold;60;my own;red", text, StringComparison.Ordinal);
        Assert.Contains("\r\n2026-07-01;long;180;", text, StringComparison.Ordinal);
        Assert.DoesNotContain("five fives", text, StringComparison.Ordinal);
        Assert.Contains(Read(folder).Rows, r => r.Session is { Kind: PlannedKind.Endurance, Minutes: 45 });
    }

    [Fact]
    public void A_row_made_by_hand_in_another_table_keeps_its_day_as_well()
    {
        using var folder = new TempFolder();
        Write(folder, PlanTable.Merge([PlanTableReader.Read(ByHand, "season.csv")]));
        Assert.DoesNotContain(Read(folder).Rows, r => r.Session!.Date == new LocalDate(2026, 6, 23));
    }

    [Fact]
    public void Written_again_the_table_is_the_same_to_the_byte()
    {
        using var folder = new TempFolder();
        folder.Write("plan.csv", ByHand);
        Write(folder, PlanTable.Empty);
        var first = File.ReadAllBytes(folder.At("plan.csv"));
        Write(folder, PlanTable.Merge([Read(folder)]));
        Assert.Equal(first, File.ReadAllBytes(folder.At("plan.csv")));
    }

    [Fact]
    public void A_file_that_is_no_plan_table_is_never_overwritten()
    {
        using var folder = new TempFolder();
        folder.Write("plan.csv", "date,minutes,rating\n2026-06-01,60,5\n");
        var error = Assert.Throws<UserError>(() => Write(folder, PlanTable.Empty));
        Assert.Contains("is no plan table", error.Message, StringComparison.Ordinal);
        Assert.StartsWith("date,minutes,rating", File.ReadAllText(folder.At("plan.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_that_a_spreadsheet_saved_as_UTF_16_is_read_and_written_with_a_mark()
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.At("plan.csv"), [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(ByHand.Replace(';', '\t').Replace("my own", "süß"))]);
        Write(folder, PlanTable.Empty);
        var bytes = File.ReadAllBytes(folder.At("plan.csv"));
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        Assert.Contains("\tsüß\tred", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    private static string? Write(TempFolder folder, PlanTable all) => PlanTarget.In(folder.Path, "rides").Write(ToCome.Next(), all, CancellationToken.None);

    private static PlanSheet Read(TempFolder folder) => PlanTableReader.Read(File.ReadAllText(folder.At("plan.csv")), "plan.csv");
}
