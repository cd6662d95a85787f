using System.Collections.Concurrent;

namespace RideAudit.Report.Fonts;

/// <summary>Fonts of the machine, and those that somebody gives, looked at only for characters that the package font has no glyph for.</summary>
/// <remarks>Files are tried in the order of their paths, so that one machine always gives the same page.</remarks>
internal sealed class SystemFonts
{
    private const long LargestFile = 64L << 20;
    private static readonly string[] Endings = [".ttf", ".otf", ".ttc"];

    private readonly Lazy<string[]> _files;
    private readonly ConcurrentDictionary<string, Face?> _opened = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Face?> _chosen = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<Face> _given = new();

    /// <param name="folders">Where fonts lie; folders that are not there are passed over.</param>
    public SystemFonts(IEnumerable<string> folders) => _files = new Lazy<string[]>(() => List(folders));

    /// <summary>The usual places of the operating systems.</summary>
    public static SystemFonts OfThisMachine { get; } = new(UsualFolders());

    /// <summary>A font that draws a text element; null when the machine has none.</summary>
    public Face? For(string element) => _chosen.GetOrAdd(element, Search);

    /// <summary>Takes a font that was given, to be asked before the machine's own.</summary>
    /// <returns>False when it has no TrueType outlines or no Unicode map.</returns>
    public bool Add(byte[] bytes)
    {
        if (Face.Open(bytes) is not { } face)
            return false;
        _given.Enqueue(face);
        _chosen.Clear();
        return true;
    }

    private Face? Search(string element)
    {
        foreach (var face in _given)
            if (face.Draws(element))
                return face;
        foreach (var file in _files.Value)
        {
            var face = _opened.GetOrAdd(file, Open);
            if (face is not null && face.Draws(element))
                return face;
        }

        return null;
    }

    private static Face? Open(string file)
    {
        try
        {
            return new FileInfo(file).Length > LargestFile ? null : Face.Open(File.ReadAllBytes(file));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string[] List(IEnumerable<string> folders)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, IgnoreInaccessible = true };
        return
        [
            .. folders.Where(Directory.Exists)
                .SelectMany(folder => Directory.EnumerateFiles(folder, "*", options))
                .Where(file => Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase))
                .OrderBy(file => IsPlain(file) ? 0 : 1).ThenBy(file => file, StringComparer.Ordinal),
        ];
    }

    private static bool IsPlain(string file)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        string[] unwanted = ["bold", "italic", "oblique", "mono", "serif", "light", "condensed"];
        return !unwanted.Any(word => name.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static IEnumerable<string> UsualFolders()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        var windows = Environment.GetFolderPath(Environment.SpecialFolder.Fonts);
        string[] folders =
        [
            windows, "/usr/share/fonts", "/usr/local/share/fonts", "/System/Library/Fonts", "/Library/Fonts",
            Path.Combine(home, ".local/share/fonts"), Path.Combine(home, ".fonts"), Path.Combine(home, "Library/Fonts"),
        ];
        return folders.Where(folder => folder.Length > 0).Distinct(StringComparer.Ordinal);
    }
}
