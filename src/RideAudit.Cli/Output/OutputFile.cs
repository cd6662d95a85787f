namespace RideAudit.Cli.Output;

/// <summary>Writes a file beside its target and moves it into place: the old file stays whole until the new one is.</summary>
internal static class OutputFile
{
    /// <summary>Refuses a target that could not be written later, before long work begins.</summary>
    /// <param name="path">The full path.</param>
    /// <param name="shown">The path as typed, for the message.</param>
    /// <exception cref="UserError">It is a folder, or its folder is missing.</exception>
    public static void Check(string path, string shown)
    {
        if (Directory.Exists(path))
            throw new UserError($"{shown} is a folder: give the name of a file to write.");
        var folder = Path.GetDirectoryName(path);
        if (folder is not null && !Directory.Exists(folder))
            throw new UserError($"{shown} cannot be written: there is no folder {folder}. Make the folder first, or choose another.");
    }

    /// <summary>Writes a file.</summary>
    /// <param name="path">The full path.</param>
    /// <param name="write">Writes the content.</param>
    /// <param name="cancel">Looked at before the file is moved into place.</param>
    /// <param name="shown">The path as typed, for the message; the full path when null.</param>
    /// <exception cref="UserError">It cannot be written.</exception>
    public static void Write(string path, Action<Stream> write, CancellationToken cancel, string? shown = null)
    {
        try
        {
            var target = (File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName : null) ?? path;
            if (IsDevice(target))
                WriteInPlace(target, write);
            else
                WriteBeside(target, write, cancel);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"{shown ?? path} cannot be written: {WriteFault.Of(e)}");
        }
    }

    private static void WriteBeside(string target, Action<Stream> write, CancellationToken cancel)
    {
        var folder = Path.GetDirectoryName(target) ?? ".";
        var beside = Path.Combine(folder, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }
            cancel.ThrowIfCancellationRequested();
            File.Move(beside, target, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    // Moving a file over /dev/null would take the device away from everyone.
    private static bool IsDevice(string target) => !OperatingSystem.IsWindows() && target.StartsWith("/dev/", StringComparison.Ordinal);

    private static void WriteInPlace(string target, Action<Stream> write)
    {
        using var stream = new FileStream(target, FileMode.Open, FileAccess.Write);
        write(stream);
    }
}
