using System.Text.RegularExpressions;

namespace RideAudit.Tests.Layout;

/// <summary>testdata/README.md against the folders of testdata: a row a folder, and folders inside a row's folder named in its text.</summary>
public sealed partial class TestDataPageTests
{
    private static readonly string Root = Repository.Path("testdata");

    private static readonly Dictionary<string, string> Rows = File.ReadAllLines(Path.Combine(Root, "README.md"))
        .Select(l => Row().Match(l)).Where(m => m.Success).ToDictionary(m => m.Groups["folder"].Value, m => m.Groups["text"].Value);

    [Fact]
    public void Every_folder_is_named()
    {
        var folders = Directory.GetDirectories(Root, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/')).ToArray();
        Assert.NotEmpty(folders);
        Assert.All(folders, folder => Assert.True(IsNamed(folder), $"testdata/README.md does not name {folder}/"));
    }

    [Fact]
    public void Every_row_has_its_folder() => Assert.All(Rows.Keys, folder => Assert.True(Directory.Exists(Path.Combine(Root, folder)), folder));

    private static bool IsNamed(string folder)
    {
        if (Rows.ContainsKey(folder) || Rows.Keys.Any(r => r.StartsWith(folder + "/", StringComparison.Ordinal)))
            return true;
        var cut = folder.LastIndexOf('/');
        return cut > 0 && Rows.TryGetValue(folder[..cut], out var text) && text.Contains($"`{folder[(cut + 1)..]}/`", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^\| `(?<folder>[^`]+)/` \|(?<text>.*)")]
    private static partial Regex Row();
}
