using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using RideAudit.Cli.BrowserPage;
using RideAudit.Cli.Commands;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.BrowserPage;

/// <summary>Both deliveries of the page are written from one archive. That they run is for the browser tests to say.</summary>
public class PageTests
{
    private static readonly string Sources = Path.Combine(Repository.Root, "src/RideAudit.Web/wwwroot");

    [Fact]
    public void The_site_keeps_every_file_for_when_there_is_no_network_and_names_its_version_by_their_content()
    {
        var files = StaticSite.Files(Page()).ToDictionary(f => f.Path, f => f.Content);
        var changed = StaticSite.Files(Page(program: "other")).ToDictionary(f => f.Path, f => f.Content);

        var worker = Encoding.UTF8.GetString(files["sw.js"]);
        var kept = JsonSerializer.Deserialize<string[]>(Regex.Match(worker, @"const files = (\[.*?\]);").Groups[1].Value)!;
        Assert.Equal(files.Keys.Where(p => p != "sw.js").Order(StringComparer.Ordinal), kept.Order(StringComparer.Ordinal));
        Assert.DoesNotContain("js/one.js", files.Keys);
        Assert.NotEqual(Version(worker), Version(Encoding.UTF8.GetString(changed["sw.js"])));
        Assert.Equal(Version(worker), Version(Encoding.UTF8.GetString(StaticSite.Files(Page()).Last().Content)));
    }

    [Fact]
    public void The_policy_of_the_single_file_names_its_script_and_its_style_and_lets_it_connect_to_nothing()
    {
        var html = Encoding.UTF8.GetString(SinglePage.Write(Page()));

        var policy = Regex.Match(html, "Content-Security-Policy\" content=\"([^\"]+)\"").Groups[1].Value;
        Assert.Contains("connect-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains($"script-src 'sha256-{Hash(Regex.Match(html, "<script>(.*?)</script>", RegexOptions.Singleline).Groups[1].Value)}'", policy, StringComparison.Ordinal);
        Assert.Contains($"style-src 'sha256-{Hash(Regex.Match(html, "<style>(.*?)</style>", RegexOptions.Singleline).Groups[1].Value)}'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain(" src=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<link", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Opened_by_a_double_click_it_is_written_where_there_is_room_and_never_over_somebody_elses_file()
    {
        using var folder = new TempFolder();
        using var here = new TestShell(folder: folder.Path, ownsWindow: true);
        Assert.Equal(ExitCode.Done, PageCommand.Open(here.Shell, Page()));
        Assert.Equal(ExitCode.Done, PageCommand.Open(here.Shell, Page(program: "newer")));
        Assert.Equal(SinglePage.Write(Page(program: "newer")), File.ReadAllBytes(folder.At("rideaudit.html")));
        Assert.Equal([folder.At("rideaudit.html"), folder.At("rideaudit.html")], here.Opened);
        folder.Write("rideaudit.html", "<!doctype html><p>My own notes.</p>");
        Assert.Throws<UserError>(() => PageCommand.Open(here.Shell, Page()));
    }

    [Fact]
    public void Where_the_programs_folder_cannot_be_written_it_goes_among_the_documents()
    {
        if (!Directory.Exists("/sys/kernel"))
            return;
        using var folder = new TempFolder();
        using var with = new TestShell(folder: "/sys/kernel", ownsWindow: true, documents: folder.Path);
        Assert.Equal(ExitCode.Done, PageCommand.Open(with.Shell, Page()));
        Assert.Equal([folder.At("rideaudit.html")], with.Opened);
        using var without = new TestShell(folder: "/sys/kernel", ownsWindow: true);
        Assert.Contains("you may not write there", Assert.Throws<UserError>(() => PageCommand.Open(without.Shell, Page())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_single_file_carries_every_module_and_the_program_byte_for_byte()
    {
        var page = Page();
        var html = Encoding.UTF8.GetString(SinglePage.Write(page));

        using var index = JsonDocument.Parse(Regex.Match(html, "id=\"bundle-index\">(.*?)</script>").Groups[1].Value);
        using var packed = new GZipStream(new MemoryStream(Convert.FromBase64String(Regex.Match(html, "id=\"bundle\">(.*?)</script>").Groups[1].Value)), CompressionMode.Decompress);
        using var all = new MemoryStream();
        packed.CopyTo(all);
        var carried = index.RootElement.EnumerateObject().ToDictionary(
            f => f.Name, f => all.ToArray().AsSpan(f.Value[0].GetInt32(), f.Value[1].GetInt32()).ToArray());
        var expected = page.Files.Where(f => f.Path.StartsWith("js/", StringComparison.Ordinal) || f.Path.StartsWith("_framework/", StringComparison.Ordinal)).ToList();
        Assert.Equal(expected.Select(f => f.Path), carried.Keys);
        Assert.All(expected, f => Assert.Equal(f.Content, carried[f.Path]));
    }

    [Fact]
    public void A_page_of_both_forms_at_once_is_refused()
    {
        using var shell = new TestShell();

        Assert.Equal(2, shell.Run("page", "--out", "a.html", "--site", "b"));
        Assert.Contains("give one of the two", shell.Error, StringComparison.Ordinal);
    }

    // The page's own sources, and a few bytes in place of the compiled program.
    private static CarriedPage Page(string program = "program")
    {
        using var packed = new MemoryStream();
        using (var archive = new ZipArchive(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in Directory.EnumerateFiles(Sources, "*", SearchOption.AllDirectories))
                archive.CreateEntryFromFile(file, Path.GetRelativePath(Sources, file).Replace('\\', '/'));
            using var entry = archive.CreateEntry("_framework/RideAudit.Web.wasm").Open();
            entry.Write(Encoding.UTF8.GetBytes(program));
        }
        packed.Position = 0;
        return CarriedPage.Read(packed);
    }

    private static string Version(string worker) => Regex.Match(worker, "const version = '([0-9a-f]{16})'").Groups[1].Value;

    private static string Hash(string text) => Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
