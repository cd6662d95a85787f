using System.Text;
using System.Text.RegularExpressions;
using RideAudit.Plan;
using RideAudit.Plan.Blocks;
using RideAudit.Plan.Table;
using RideAudit.Sessions;

namespace RideAudit.Tests.Sessions;

/// <summary>Holds docs/plan.md to the program: every example is read, and the library stands on the page as it is.</summary>
public sealed partial class PlanPageTests
{
    private const string LibraryHead = "| session | kind | from | day of | blocks |\n|---|---|---|---|---|\n";

    private static readonly string Page = File.ReadAllText(Repository.Path("docs", "plan.md")).ReplaceLineEndings("\n");

    public static TheoryData<string> Blocks => [.. Fenced("blocks").SelectMany(b => b.Split('\n', StringSplitOptions.RemoveEmptyEntries))];

    public static TheoryData<string> Written =>
        [.. Cell().Matches(Page).Select(m => m.Groups["blocks"].Value).Where(b => b.Contains(' ', StringComparison.Ordinal) && !b.StartsWith("very", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Blocks))]
    public void Every_example_of_blocks_is_read(string blocks)
    {
        Assert.NotNull(SessionBlocks.Read(blocks, out var mistakes));
        Assert.Empty(mistakes);
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void Every_form_in_the_tables_is_read(string blocks)
    {
        var whole = char.IsAsciiDigit(blocks[0]) && !blocks.EndsWith('%') && !blocks.EndsWith("hr", StringComparison.Ordinal) ? blocks : $"5 min {blocks}";
        Assert.True(
            new[] { blocks, whole, $"5 min {blocks}" }.Any(b => SessionBlocks.Read(b, out _) is not null),
            $"{blocks} is on the page and is not read");
    }

    [Fact]
    public void The_plan_table_on_the_page_is_read_without_a_mistake()
    {
        var sheet = PlanTableReader.Read(Assert.Single(Fenced("csv")), "plan.csv");

        Assert.Empty(sheet.Mistakes);
        Assert.Equal(6, sheet.Rows.Length);
        Assert.All(sheet.Rows.Where(r => r.Session!.Session is not null), r => Assert.NotNull(SessionLibrary.Find(r.Session!.Session!)));
        foreach (var column in Enum.GetValues<PlanColumn>())
            Assert.Contains($"| `{PlanHeader.NameOf(column)}` |", Page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rider_file_on_the_page_is_read_without_a_mistake()
    {
        var result = RiderFileReader.Read(Assert.Single(Fenced("toml")), "rider.toml");

        Assert.Empty(result.Mistakes);
        Assert.Equal(5, result.Rider!.MinutesFree!.Count);
    }

    [Fact]
    public void The_library_stands_on_the_page_as_it_is()
    {
        if (Repository.Updates)
            File.WriteAllText(Repository.Path("docs", "plan.md"), Page[..LibraryStart()] + Library());
        Assert.Equal(Library(), Page[LibraryStart()..]);
    }

    private static int LibraryStart() => Page.IndexOf(LibraryHead, StringComparison.Ordinal) is >= 0 and var at ? at : Page.Length;

    private static string Library()
    {
        var table = new StringBuilder(LibraryHead);
        foreach (var session in SessionLibrary.All)
            table.Append(FormattableString.Invariant(
                $"| {session.Name} | {PlannedKinds.WordOf(session.Kind)} | {session.Experience.ToString().ToLowerInvariant()} | {session.ShortestDay} min | `{session.Blocks}` |\n"));
        return table.ToString();
    }

    private static IEnumerable<string> Fenced(string language) =>
        Regex.Matches(Page, $"```{language}\n(?<text>.*?)```", RegexOptions.Singleline).Select(m => m.Groups["text"].Value);

    [GeneratedRegex(@"^\| `(?<blocks>[^`]+)`(?:, `(?<blocks>[^`]+)`)* \| (?!what)", RegexOptions.Multiline)]
    private static partial Regex Cell();
}
