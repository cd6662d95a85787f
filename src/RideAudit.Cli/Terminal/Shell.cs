using NodaTime;

namespace RideAudit.Cli.Terminal;

/// <summary>Everything the program may know of the world around it. Tests hand in their own.</summary>
internal sealed class Shell : IDisposable
{
    /// <summary>Standard output.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Standard error.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Standard input.</summary>
    public required TextReader In { get; init; }

    /// <summary>Columns to write in.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Colours may be written to standard output.</summary>
    public bool Colour { get; init; }

    /// <summary>Marks outside ASCII may be written.</summary>
    public bool Unicode { get; init; } = true;

    /// <summary>Standard error is a terminal that moves its cursor: progress is shown there.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>Somebody is there to answer questions.</summary>
    public bool Interactive { get; init; }

    /// <summary>The window was opened for this program alone, by a double click or a drop on its icon, and closes with it.</summary>
    public bool OwnsWindow { get; init; }

    /// <summary>Opens a file in the program the system has for it.</summary>
    public Action<string> OpenFile { get; init; } = _ => { };

    /// <summary>Waits until a key is pressed.</summary>
    public Action WaitForKey { get; init; } = () => { };

    /// <summary>The user's folder for documents; empty where there is none.</summary>
    public string Documents { get; init; } = "";

    /// <summary>The clock: the only one there is.</summary>
    public required IClock Clock { get; init; }

    /// <summary>The machine's time zone.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>The folder that relative paths start from.</summary>
    public required string CurrentDirectory { get; init; }

    /// <summary>Signalled by Ctrl-C.</summary>
    public CancellationToken Cancel { get; init; }

    /// <summary>The marks that can be shown.</summary>
    public Marks Marks => new(Unicode);

    /// <summary>Today in a zone.</summary>
    public LocalDate Today(DateTimeZone zone) => Clock.GetCurrentInstant().InZone(zone).Date;

    /// <summary>A path as typed, made absolute.</summary>
    /// <param name="path">Relative or absolute.</param>
    public string FullPath(string path) => Path.GetFullPath(path, CurrentDirectory);

    /// <summary>Says something on standard error, after what was written to standard output: broken at spaces on a terminal, whole elsewhere, where a program may read it.</summary>
    /// <param name="text">The text, without its last line end.</param>
    public void Tell(string text)
    {
        Out.Flush();
        var shown = Marks.Show(text);
        foreach (var line in ShowsProgress ? Wrap.Lines(shown, Width) : [shown])
            Error.Write(Marks.Spaced(line) + "\n");
    }

    /// <summary>Says what went wrong.</summary>
    /// <param name="problem">The text, without the program's name.</param>
    public void TellError(string problem) => Tell($"rideaudit: {problem}");

    /// <summary>Writes out what is still held back.</summary>
    public void Dispose()
    {
        Out.Flush();
        Error.Flush();
    }
}
