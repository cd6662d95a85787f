using System.Collections.Immutable;
using System.IO.Compression;

namespace RideAudit.Cli.BrowserPage;

/// <summary>The files of the browser page that a build of the program carries.</summary>
/// <param name="Files">Path with <c>/</c> and content, in the order of the paths.</param>
internal sealed record CarriedPage(ImmutableArray<(string Path, byte[] Content)> Files)
{
    private const string Resource = "RideAudit.Cli.Page";

    /// <summary>False for a build that was made without the page.</summary>
    public static bool IsThere => typeof(CarriedPage).Assembly.GetManifestResourceInfo(Resource) is not null;

    /// <summary>Unpacks the page.</summary>
    /// <exception cref="UserError">This build was made without one.</exception>
    public static CarriedPage Open()
    {
        using var packed = typeof(CarriedPage).Assembly.GetManifestResourceStream(Resource)
            ?? throw new UserError("This build of the program carries no page: docs/page.md says how to build one that does.");
        return Read(packed);
    }

    /// <summary>Unpacks a page from an archive.</summary>
    public static CarriedPage Read(Stream packed)
    {
        using var archive = new ZipArchive(packed, ZipArchiveMode.Read);
        var files = new List<(string, byte[])>();
        foreach (var entry in archive.Entries.Where(e => e.Name.Length > 0).OrderBy(e => e.FullName, StringComparer.Ordinal))
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            files.Add((entry.FullName, bytes.ToArray()));
        }
        return new CarriedPage([.. files]);
    }

    /// <summary>A file's content.</summary>
    /// <exception cref="InvalidDataException">The page has no such file.</exception>
    public byte[] this[string path] =>
        Files.FirstOrDefault(f => f.Path == path).Content ?? throw new InvalidDataException($"The page has no file {path}.");
}
