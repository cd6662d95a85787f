using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Cli.Tests.Support;
using RideAudit.Ingest;

namespace RideAudit.Cli.Tests.Terminal;

public class ReadProgressTests
{
    private readonly FixedClock _clock = new(Instant.FromUtc(2026, 6, 22, 7, 0));
    private readonly StringWriter _error = new();

    [Fact]
    public void Files_done_rate_and_time_left_are_told_in_one_line_that_is_wiped_at_the_end()
    {
        using (var progress = Progress(unicode: true))
        {
            _clock.Advance(Duration.FromSeconds(2));
            progress.Report(new IngestProgress(50, 200, "a.fit"));
        }
        Assert.Equal("\r━━━━━━╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌ 50 of 200 files · 25 a second · 6 s left\u001b[K\r\u001b[K", _error.ToString());
    }

    [Fact]
    public void Work_that_is_over_in_a_moment_shows_nothing()
    {
        using (var progress = Progress(unicode: true))
        {
            _clock.Advance(Duration.FromMilliseconds(200));
            progress.Report(new IngestProgress(200, 200, "a.fit"));
        }
        Assert.Equal("", _error.ToString());
    }

    [Fact]
    public void Without_Unicode_the_bar_is_ASCII()
    {
        using var progress = Progress(unicode: false);
        _clock.Advance(Duration.FromSeconds(1));
        progress.Report(new IngestProgress(1, 2, "a.fit"));
        Assert.Equal("\r############............ 1 of 2 files; 1 a second; 1 s left\u001b[K", _error.ToString());
    }

    private ReadProgress Progress(bool unicode) => new(new Shell
    {
        Out = TextWriter.Null,
        Error = _error,
        In = TextReader.Null,
        Unicode = unicode,
        Clock = _clock,
        Zone = DateTimeZone.Utc,
        CurrentDirectory = Path.GetTempPath(),
    });
}
