namespace RideAudit.Ingest;

/// <summary>Finds the files under a folder. What cannot be entered or followed is named, never fatal.</summary>
internal static class FolderWalker
{
    private static readonly HashSet<string> RideEndings = new(StringComparer.OrdinalIgnoreCase) { ".fit", ".csv", ".gz", ".zip", ".tcx", ".gpx" };

    /// <summary>Lists files in the order of their names under the folder.</summary>
    public static (List<FoundFile> Files, List<FileNotice> Notices) Walk(string folder)
    {
        var files = new List<FoundFile>();
        var notices = new List<FileNotice>();
        Visit(new DirectoryInfo(folder), "", files, notices, []);
        files.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        return (files, notices);
    }

    private static void Visit(DirectoryInfo directory, string prefix, List<FoundFile> files, List<FileNotice> notices, HashSet<string> seen)
    {
        // A link that points back up would otherwise be walked for ever.
        if (!seen.Add(directory.ResolveLinkTarget(true)?.FullName ?? directory.FullName))
            return;
        FileSystemInfo[] entries;
        try
        {
            entries = directory.GetFileSystemInfos();
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            notices.Add(new FileNotice(prefix.TrimEnd('/'), "not readable", null, "This folder could not be opened: check its permissions.", true));
            return;
        }
        foreach (var entry in entries)
        {
            var name = prefix + entry.Name;
            if (entry.Name.StartsWith('.'))
                continue;
            if (entry is DirectoryInfo sub)
                Visit(sub, name + "/", files, notices, seen);
            else
                files.Add(new FoundFile(entry.FullName, name, RideEndings.Contains(entry.Extension)));
        }
    }
}
