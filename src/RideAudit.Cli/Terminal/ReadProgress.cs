using NodaTime;
using RideAudit.Formatting;
using RideAudit.Ingest;

namespace RideAudit.Cli.Terminal;

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
        var text = $"{new string(done, filled)}{new string(left, BarCells - filled)} {value.FilesDone} of {Shown.Tally(value.FilesFound, noun)}";
        if (rate > 0)
            text += $"{shell.Marks.Dot}{Shown.Number(rate)} a second{shell.Marks.Dot}{TimeLeft((value.FilesFound - value.FilesDone) / rate)} left";
        text = Marks.Spaced(text);
        return text.Length < shell.Width ? text : text[..(shell.Width - 1)];
    }

    private static string TimeLeft(double seconds) =>
        seconds < 90 ? Shown.Quantity(Math.Ceiling(seconds), "s") : Shown.Length(seconds);
}
