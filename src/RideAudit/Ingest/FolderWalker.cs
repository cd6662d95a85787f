namespace RideAudit.Ingest;

/// <summary>Finds the files under a folder. What cannot be entered or followed is named, never fatal.</summary>
internal sealed class FolderWalker
{
    private readonly List<FoundFile> _files = [];
    private readonly List<FileNotice> _notices = [];
    private readonly HashSet<string> _seen = [];
    private readonly List<(string Real, string Name)> _linkedFolders = [];

    /// <summary>Lists files, or the one file given, in the order of their names under the folder. Names that begin with a dot are passed over.</summary>
    public static (List<FoundFile> Files, List<FileNotice> Notices) Walk(string folder)
    {
        var walker = new FolderWalker();
        if (File.Exists(folder))
            return ([new FoundFile(Path.GetFullPath(folder), ShownName.Of(Path.GetFileName(folder)))], []);
        var root = RealPath.Of(folder) ?? Path.GetFullPath(folder);
        // A link to a folder that holds this one would bring in everything around it.
        for (var above = Path.GetDirectoryName(root); above is not null; above = Path.GetDirectoryName(above))
            walker._seen.Add(above);
        walker.Visit(root, "");
        // Real folders first: what a link shows again keeps its own name.
        for (var i = 0; i < walker._linkedFolders.Count; i++)
            walker.Visit(walker._linkedFolders[i].Real, walker._linkedFolders[i].Name + "/");
        walker._files.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        return (walker._files, walker._notices);
    }

    private void Visit(string real, string prefix)
    {
        if (!_seen.Add(real))
            return;
        FileSystemInfo[] entries;
        try
        {
            entries = new DirectoryInfo(real).GetFileSystemInfos();
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            _notices.Add(new FileNotice(prefix.TrimEnd('/'), "not readable", null, "This folder could not be opened, so nothing under it was read: check its permissions.", true));
            return;
        }
        Array.Sort(entries, (a, b) => string.CompareOrdinal(a.Name, b.Name));
        foreach (var entry in entries.Where(e => !e.Name.StartsWith('.')))
            Take(entry, prefix + ShownName.Of(entry.Name));
    }

    private void Take(FileSystemInfo entry, string name)
    {
        if (entry.LinkTarget is not null)
            Follow(entry, name);
        else if (entry is DirectoryInfo)
            Visit(entry.FullName, name + "/");
        else
            _files.Add(new FoundFile(entry.FullName, name));
    }

    private void Follow(FileSystemInfo link, string name)
    {
        var real = RealPath.Of(link.FullName);
        if (real is not null && Directory.Exists(real))
            _linkedFolders.Add((real, name));
        else if (real is not null && File.Exists(real))
            _files.Add(new FoundFile(real, name));
        else
            _notices.Add(new FileNotice(name, "broken link", null, "A link to something that is not there: restore what it pointed to, or remove the link.", true));
    }

    /// <summary>A file under the folder.</summary>
    /// <param name="Path">Where it is on the disk, links followed.</param>
    /// <param name="Name">Path under the folder with <c>/</c>, fit to be shown.</param>
    internal readonly record struct FoundFile(string Path, string Name);
}
