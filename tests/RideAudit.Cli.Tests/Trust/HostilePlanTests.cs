using System.Text;
using System.Xml.Linq;
using NodaTime;
using RideAudit.Cli.Tests.Support;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>The same of plan tables, session names, folders of riders, and the page as it is drawn for a browser.</summary>
public sealed class HostilePlanTests
{
    private const string Markup = "</text><script>alert(1)</script>]]>&amp;<!--\" onload=\"x";

    // A text of which more than a hundredth is control characters is taken for no text at all.
    private static readonly string Plain = string.Concat(Enumerable.Range(1, 28).Select(day => $"2026-09-{day:D2},endurance,60,,{string.Concat(Enumerable.Repeat("steady and easy ", 20))},\n")).TrimEnd();

    private static readonly string Session = $"four fours {HostileText.All}";

    [Fact]
    public void No_control_or_turning_mark_of_a_plan_table_or_a_session_reaches_page_terminal_calendar_workout_or_table()
    {
        using var folder = new TempFolder();
        var rides = WithPlan(folder);
        var made = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        Run(["review", rides, "--as-of", Demo.AsOf, "--text", "--pdf", "review.pdf", "--json", "review.json"]);
        Run(["next", rides, "--as-of", Demo.AsOf, "--weeks", "2", "--ics", "next.ics", "--workouts", "workouts", "--plan", "plan-made.csv"]);
        Run(["next", rides, "--as-of", Demo.AsOf, "--format", "json"]);
        Run(["check", rides]);
        foreach (var file in Directory.EnumerateFiles(folder.At("out"), "*", SearchOption.AllDirectories))
            made[Path.GetRelativePath(folder.At("out"), file)] = File.ReadAllBytes(file);
        // The coach's row stands in what was written, or nothing was tried.
        Assert.Contains("ourfours", PdfText.Shown(made["review.pdf"]), StringComparison.Ordinal);
        Assert.Contains("our fours", Encoding.UTF8.GetString(made["next.ics"]), StringComparison.Ordinal);
        Assert.Contains(made.Keys, k => k.StartsWith("workouts", StringComparison.Ordinal) && k.Contains("four-fours", StringComparison.Ordinal));
        Assert.All(made.Keys, k => Assert.DoesNotContain(k, PlainText.Harms));
        foreach (var (name, bytes) in made)
            HostileText.AssertHarmless(name, bytes);

        void Run(string[] words)
        {
            Directory.CreateDirectory(folder.At("out"));
            using var shell = new TestShell(folder: folder.At("out"));
            var code = shell.Run(words);
            Assert.True(code is 0 or 4, $"{string.Join(' ', words)}: {code} {shell.Error}");
            var line = string.Join(' ', words.Where(w => !w.Contains('/', StringComparison.Ordinal)));
            (made[line + " printed"], made[line + " told"]) = (Encoding.UTF8.GetBytes(shell.Out), Encoding.UTF8.GetBytes(shell.Error));
        }
    }

    [Fact]
    public void No_control_or_turning_mark_of_a_riders_folder_or_label_reaches_a_rosters_outputs()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var folder = new TempFolder();
        WithPlan(folder, $"riders/a {HostileText.All}");
        folder.Write($"riders/b {HostileText.All}/{HostileText.All}.fit", "no ride");
        using var shell = new TestShell(folder: folder.Path);
        var code = shell.Run("roster", "riders", "--as-of", Demo.AsOf, "--out", "out", "--next");
        Assert.True(code == 0, shell.Error);
        HostileText.AssertHarmless("out", Encoding.UTF8.GetBytes(shell.Out));
        HostileText.AssertHarmless("error", Encoding.UTF8.GetBytes(shell.Error));
        var files = Directory.EnumerateFiles(folder.At("out")).ToArray();
        Assert.Equal(6, files.Length);
        foreach (var file in files)
        {
            Assert.DoesNotContain(Path.GetFileName(file), PlainText.Harms);
            HostileText.AssertHarmless(Path.GetFileName(file), File.ReadAllBytes(file));
        }
    }

    [Fact]
    public void The_page_as_drawn_for_a_browser_is_well_formed_holds_no_mark_and_runs_nothing()
    {
        using var folder = new TempFolder();
        var rides = WithPlan(folder, more: Markup);
        folder.Write("rides/note.md", $"Well {HostileText.All} ridden {Markup}\n");
        var rider = RiderFileReader.Read(File.ReadAllText(Path.Combine(rides, "rider.toml")), "rider.toml").Rider!;
        var content = FolderReader.Read(rides, rider, DateTimeZone.Utc, null, CancellationToken.None);
        var review = ReviewBuilder.Review(content, rider, new ReviewRequest { Today = new LocalDate(2026, 6, 22), AsOf = new LocalDate(2026, 6, 22) })!;
        var pages = ReviewSvg.Draw(review, new PageOptions { });
        Assert.True(pages.Pages.Length >= 2);
        for (var i = 0; i < pages.Pages.Length; i++)
        {
            var page = pages.Standalone(i);
            Assert.DoesNotContain(page, c => c != '\n' && PlainText.Harms(c));
            var elements = XDocument.Parse(page).Descendants().ToArray();
            Assert.DoesNotContain(elements, e => e.Name.LocalName is "script" or "foreignObject" or "iframe");
            Assert.DoesNotContain(elements.Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || a.Value.Contains("javascript:", StringComparison.OrdinalIgnoreCase));
        }
        // The words themselves are there, as words.
        Assert.Contains(pages.Pages, p => XDocument.Parse(p).Root!.Value.Contains("alert(1)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_session_of_a_thousand_letters_is_written_under_a_name_that_disks_take()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder);
        File.WriteAllText(Path.Combine(rides, "plan.csv"), $"date,kind,minutes,session,blocks\n2026-06-23,high,60,{new string('s', 1000)},10 min 50 %\n");
        using var shell = new TestShell(folder: folder.Path);
        var code = shell.Run("next", rides, "--as-of", Demo.AsOf, "--workouts", "workouts", "--ics", "next.ics");
        Assert.True(code == 0, shell.Error);
        Assert.All(Directory.EnumerateFiles(folder.At("workouts")), f => Assert.InRange(Path.GetFileName(f).Length, 1, 255));
    }

    private static string WithPlan(TempFolder folder, string name = "rides", string more = "")
    {
        var rides = Demo.CopyTo(folder, name, riderFile: false);
        var rider = File.ReadAllText(Path.Combine(Repository.Demo, "rider.toml"));
        folder.Write($"{name}/rider.toml", rider.Replace("\"Rider A\"", $"\"=Rider {HostileText.Escaped}{more.Replace("\"", "\\\"", StringComparison.Ordinal)}\"", StringComparison.Ordinal));
        var cell = $"{Session}{more}".Replace("\"", "\"\"", StringComparison.Ordinal);
        folder.Write($"{name}/plan.csv", $"""
            date,kind,minutes,session,note,blocks
            {Plain}
            2026-06-16,high,60,"{cell}","=1+1 {cell}",
            2026-06-23,high,60,"{cell}","{cell}","15 min easy, 4 x 4 min 108 %, 3 min easy between, easy to the end"
            2026-06-24,{HostileText.All},60,"{cell}",,
            2026-06-25,endurance,60,x,,"{cell}"

            """);
        return rides;
    }
}
