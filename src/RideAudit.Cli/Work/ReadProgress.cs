using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Ingest;

namespace RideAudit.Cli.Work;

/// <summary>One line on standard error that says how far reading has come; it is wiped when reading ends.</summary>
internal sealed class ReadProgress(Shell shell, string noun = "file") : IProgress<IngestProgress>, IDisposable
{
    private const int BarCells = 24;
    private static readonly Duration Pace = Duration.FromMilliseconds(100);
    private readonly Lock _lock = new();
    private readonly Instant _began = shell.Clock.GetCurrentInstant();
    private Instant _drawn = Instant.MinValue;
    private bool _shown;

    /// <inheritdoc/>
    public void Report(IngestProgress value)
    {
        lock (_lock)
        {
            var now = shell.Clock.GetCurrentInstant();
            // The first moments are too short to say anything of, and most folders are read within them.
            if (now - _began < Pace * 3 || now - _drawn < Pace)
                return;
            _drawn = now;
            _shown = true;
            shell.Error.Write($"\r{Line(value, now - _began)}\u001b[K");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
            if (_shown)
                shell.Error.Write("\r\u001b[K");
    }

    private string Line(IngestProgress value, Duration elapsed)
    {
        var share = value.FilesFound > 0 ? Math.Clamp((double)value.FilesDone / value.FilesFound, 0, 1) : 0;
        var filled = (int)(share * BarCells);
        var (done, left) = shell.Unicode ? ('━', '╌') : ('#', '.');
        var rate = value.FilesDone / elapsed.TotalSeconds;
        var text = $"{new string(done, filled)}{new string(left, BarCells - filled)} {value.FilesDone} of {Say.Count(value.FilesFound, noun)}";
        if (rate > 0)
            text += $"{new Marks(shell.Unicode).Dot}{Say.Number(rate)} a second{new Marks(shell.Unicode).Dot}{TimeLeft((value.FilesFound - value.FilesDone) / rate)} left";
        text = text.Replace('\u00A0', ' ');
        return text.Length < shell.Width ? text : text[..(shell.Width - 1)];
    }

    private static string TimeLeft(double seconds) =>
        seconds < 90 ? $"{Say.Number(Math.Ceiling(seconds))} s" : Say.Duration((long)seconds);
}
