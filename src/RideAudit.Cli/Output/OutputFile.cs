using RideAudit.Cli.Terminal;
using RideAudit.Ingest;

namespace RideAudit.Cli.Output;

/// <summary>A file to be written: looked at before long work begins, written beside its place and moved there, so that the old file stays whole until the new one is.</summary>
internal sealed class OutputFile
{
    private const string Unfinished = ".rideaudit-part";
    private const int Tries = 3;
    private static readonly StringComparison PathCase = OperatingSystem.IsLinux() ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;

    private readonly string _target;

    private OutputFile(string path, string shown)
    {
        (Path, Shown) = (path, shown);
        _target = (File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName : null) ?? path;
    }

    /// <summary>The full path.</summary>
    public string Path { get; }

    /// <summary>The path as typed, for messages.</summary>
    public string Shown { get; }

    /// <summary>A target that a user named.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">The path as typed.</param>
    /// <param name="kind">What will be written.</param>
    /// <param name="folder">The folder or file that is read, full path; null when nothing is.</param>
    /// <param name="inputs">Other files that are read, full paths.</param>
    /// <exception cref="UserError">It cannot be written, or something would be lost that is not the program's own.</exception>
    public static OutputFile Named(Shell shell, string typed, OutputKind kind, string? folder = null, params IReadOnlyList<string> inputs)
    {
        var file = new OutputFile(shell.FullPath(typed), typed);
        if (Directory.Exists(file.Path))
            throw new UserError($"{typed} is a folder: give the name of a file to write.");
        var beside = System.IO.Path.GetDirectoryName(file._target);
        if (beside is not null && !Directory.Exists(beside))
            throw new UserError($"{typed} cannot be written: there is no folder {System.IO.Path.GetDirectoryName(file.Path)}. Make the folder first, or choose another.");
        if (file.IsDevice)
            return file;
        file.RefuseLoss(kind, folder, inputs);
        if (beside is not null && WhyNot(beside) is { } problem)
            throw new UserError($"{typed} cannot be written: {problem}");
        return file;
    }

    /// <summary>A target that the program named itself, in a folder that was looked at.</summary>
    /// <param name="folder">The folder's full path.</param>
    /// <param name="name">The file's name.</param>
    /// <param name="shown">The path for messages; the name when null.</param>
    public static OutputFile In(string folder, string name, string? shown = null) => new(System.IO.Path.Combine(folder, name), shown ?? name);

    /// <summary>Why no file can be made in a folder, and what to do; null when one can.</summary>
    /// <param name="folder">The full path.</param>
    public static string? WhyNot(string folder)
    {
        try
        {
            RemoveDead(folder);
            using var probe = Create(folder, "probe", FileOptions.DeleteOnClose);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return WriteFault.Of(e);
        }
    }

    /// <summary>The two are one file.</summary>
    public bool IsSameAs(OutputFile other) => _target.Equals(other._target, PathCase);

    /// <summary>Writes the file.</summary>
    /// <param name="write">Writes the content.</param>
    /// <param name="cancel">Looked at before the file is moved into place.</param>
    /// <exception cref="UserError">It cannot be written.</exception>
    public void Write(Action<Stream> write, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        try
        {
            if (IsDevice)
                WriteInPlace(write);
            else
                for (var tries = 1; !WriteBeside(write, cancel) && tries < Tries; tries++)
                    continue;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"{Shown} cannot be written: {WriteFault.Of(e)}");
        }
    }

    // Moving a file over /dev/null would take the device away from everyone.
    private bool IsDevice => !OperatingSystem.IsWindows() && _target.StartsWith("/dev/", StringComparison.Ordinal);

    private void RefuseLoss(OutputKind kind, string? folder, IReadOnlyList<string> inputs)
    {
        if (inputs.Append(folder).Any(i => i is not null && i.Equals(_target, PathCase)))
            throw new UserError($"{Shown} is read by this run and would be lost: choose another name.");
        if (kind.IsNameOf(_target))
            return;
        if (folder is not null && FolderFiles.IsUnder(folder, _target))
            throw new UserError($"{Shown} lies in the folder that is read, and would be taken for a ride file: give a name that ends in {kind.Ending}.");
        if (File.Exists(_target) && !IsOurs(kind))
            throw new UserError($"{Shown} is there already, is not {kind.Called} that this program wrote, and would be lost: give a name that ends in {kind.Ending}.");
    }

    private bool IsOurs(OutputKind kind)
    {
        try
        {
            return kind.Wrote(_target);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <returns>False when another run took the unfinished file away.</returns>
    private bool WriteBeside(Action<Stream> write, CancellationToken cancel)
    {
        var folder = System.IO.Path.GetDirectoryName(_target) ?? ".";
        RemoveDead(folder);
        // Open until it is in place: what is open is seen to be alive.
        using var stream = Create(folder, System.IO.Path.GetFileName(_target), FileOptions.None);
        try
        {
            write(stream);
            stream.Flush(flushToDisk: true);
            cancel.ThrowIfCancellationRequested();
            File.Move(stream.Name, _target, overwrite: true);
            return true;
        }
        catch (FileNotFoundException)
        {
            return false;
        }
        catch
        {
            File.Delete(stream.Name);
            throw;
        }
    }

    // Another run may look at the file between its making and its locking, and take it for a dead one.
    private static FileStream Create(string folder, string name, FileOptions options)
    {
        for (var tries = 1; ; tries++)
        {
            var path = System.IO.Path.Combine(folder, $".{name}.{System.IO.Path.GetRandomFileName()[..8]}{Unfinished}");
            try
            {
                return new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.Delete, bufferSize: 4096, options);
            }
            catch (IOException) when (tries < Tries)
            {
            }
        }
    }

    // A run that was killed leaves its unfinished file behind; the lock went with the run.
    private static void RemoveDead(string folder)
    {
        foreach (var path in Directory.EnumerateFiles(folder, $".*{Unfinished}"))
        {
            try
            {
                using var alone = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
            }
        }
    }

    private void WriteInPlace(Action<Stream> write)
    {
        using var stream = new FileStream(_target, FileMode.Open, FileAccess.Write);
        write(stream);
    }
}
