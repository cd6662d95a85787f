using NodaTime;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Tests.Support;

/// <summary>A shell that writes into strings.</summary>
internal sealed class TestShell : IDisposable
{
    private readonly StringWriter _out = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public TestShell(
        int width = 80, bool unicode = true, bool colour = false, string? answers = null, string? folder = null,
        bool ownsWindow = false, bool terminal = false, string documents = "", CancellationToken cancel = default)
    {
        Shell = new Shell
        {
            Out = _out,
            Error = _error,
            In = new StringReader(answers ?? ""),
            Width = width,
            Unicode = unicode,
            Colour = colour,
            Interactive = answers is not null,
            OwnsWindow = ownsWindow,
            ShowsProgress = terminal,
            OpenFile = Opened.Add,
            WaitForKey = () => KeysWaitedFor++,
            Documents = documents,
            Clock = new FixedClock(Instant.FromUtc(2026, 6, 16, 8, 0)),
            Zone = DateTimeZoneProviders.Tzdb["Europe/Lisbon"],
            CurrentDirectory = folder ?? Path.GetTempPath(),
            Cancel = cancel,
        };
    }

    public Shell Shell { get; }

    public List<string> Opened { get; } = [];

    public int KeysWaitedFor { get; private set; }

    public string Out => _out.ToString();

    public string Error => _error.ToString();

    public int Run(params string[] args) => Application.Run(args, Shell);

    public void Dispose() => Shell.Dispose();
}
