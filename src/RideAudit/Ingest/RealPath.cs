namespace RideAudit.Ingest;

/// <summary>Where a path leads once every link on it is followed.</summary>
internal static class RealPath
{
    private const int MostLinks = 64;

    /// <returns>The path without links; null when a link leads nowhere or round in a circle.</returns>
    public static string? Of(string path)
    {
        var links = 0;
        return Resolve(Path.GetFullPath(path), ref links);
    }

    private static string? Resolve(string path, ref int links)
    {
        var parent = Path.GetDirectoryName(path);
        if (parent is null)
            return path;
        if (Resolve(parent, ref links) is not { } realParent)
            return null;
        var here = Path.Combine(realParent, Path.GetFileName(path));
        if (new FileInfo(here).LinkTarget is not { } target)
            return here;
        if (++links > MostLinks)
            return null;
        return Resolve(Path.GetFullPath(Path.Combine(realParent, target)), ref links);
    }
}
