namespace RideAudit.Cli.Tests.Support;

/// <summary>Folders of rides taken from the demo.</summary>
internal static class Demo
{
    public const string AsOf = "2026-06-22";

    /// <summary>The demo's last weeks, from its own files: quick to read.</summary>
    public static string CopyTo(TempFolder folder, string name = "rides", string from = "2026-06-08", bool riderFile = true)
    {
        var target = Directory.CreateDirectory(folder.At(name)).FullName;
        foreach (var file in Directory.EnumerateFiles(Repository.Demo))
        {
            var fileName = Path.GetFileName(file);
            if (string.CompareOrdinal(fileName, from) >= 0 && (riderFile || fileName != "rider.toml"))
                File.Copy(file, Path.Combine(target, fileName));
        }
        return target;
    }
}
