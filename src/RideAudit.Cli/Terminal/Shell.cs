using NodaTime;
using Spectre.Console;

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

    /// <summary>The clock: the only one there is.</summary>
    public required IClock Clock { get; init; }

    /// <summary>The machine's time zone.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>The folder that relative paths start from.</summary>
    public required string CurrentDirectory { get; init; }

    /// <summary>Signalled by Ctrl-C.</summary>
    public CancellationToken Cancel { get; init; }

    private IAnsiConsole? _console;

    /// <summary>Standard output for styled lines.</summary>
    public IAnsiConsole Console => _console ??= AnsiConsole.Create(new AnsiConsoleSettings
    {
        Ansi = Colour ? AnsiSupport.Yes : AnsiSupport.No,
        ColorSystem = Colour ? ColorSystemSupport.EightBit : ColorSystemSupport.NoColors,
        Interactive = InteractionSupport.No,
        Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        Out = new FixedOutput(Out, Width),
    });

    /// <summary>Today in a zone.</summary>
    /// <param name="zone">The zone.</param>
    public LocalDate Today(DateTimeZone zone) => Clock.GetCurrentInstant().InZone(zone).Date;

    /// <summary>A path as typed, made absolute.</summary>
    /// <param name="path">Relative or absolute.</param>
    public string FullPath(string path) => Path.GetFullPath(path, CurrentDirectory);

    /// <summary>Writes running text to standard error: broken at spaces on a terminal, whole elsewhere, where a program may read it.</summary>
    /// <param name="text">The text, without its last line end.</param>
    public void WriteError(string text)
    {
        foreach (var line in ShowsProgress ? Wrap.Lines(text, Width) : [text])
            Error.Write(line + "\n");
    }

    /// <summary>Writes out what is still held back.</summary>
    public void Dispose()
    {
        Out.Flush();
        Error.Flush();
    }
}
