using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Work;

/// <summary>Finds the coach's note.</summary>
internal static class NoteSource
{
    /// <summary>The name looked for in the folder of rides.</summary>
    public const string FileName = "note.md";

    /// <summary>The note that was given as text or as a file, or the folder's own.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">Text or file; null when not given.</param>
    /// <param name="folder">The folder of rides.</param>
    /// <returns>The note; null when there is none.</returns>
    /// <exception cref="UserError">A file was named that is not there, or it cannot be read.</exception>
    public static string? Find(Shell shell, string? typed, string folder)
    {
        if (typed is null)
            return Blank(ReadIfThere(Path.Combine(folder, FileName)));
        if (!LooksLikePath(typed))
            return Blank(typed);
        return Blank(ReadIfThere(shell.FullPath(typed)) ?? (IsNamedAsFile(typed)
            ? throw new UserError($"There is no note {typed}. Give a file that is there, or the note itself as text.")
            : typed));
    }

    // A sentence may end in .txt or hold a slash, but hardly without a space.
    private static bool IsNamedAsFile(string typed) =>
        typed.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
        || typed.EndsWith(".txt", StringComparison.OrdinalIgnoreCase)
        || (!typed.Contains(' ') && typed.IndexOfAny(['/', Path.DirectorySeparatorChar]) >= 0);

    private static bool LooksLikePath(string typed) =>
        typed.Length is > 0 and < 1024 && !typed.Contains('\n') && typed.IndexOfAny(Path.GetInvalidPathChars()) < 0;

    private static string? Blank(string? note) => string.IsNullOrWhiteSpace(note) ? null : note;

    private static string? ReadIfThere(string path)
    {
        if (!File.Exists(path))
            return null;
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"The note {path} cannot be read: {e.Message}");
        }
    }
}
