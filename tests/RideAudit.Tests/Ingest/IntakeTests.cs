using System.Globalization;
using System.Text;
using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Tests.Ingest;

public sealed class IntakeTests
{
    private const string RiderToml = "time_zone = \"Europe/Lisbon\"\n[csv]\npower = \"Leistung\"\n";

    private static readonly byte[] Ride = new FitSketch().Bytes();

    /// <summary>A season's odds and ends: rides of every format, a copy, a second device, a log, a note, an archive, damage.</summary>
    private static readonly (string Name, byte[] Bytes)[] Files =
    [
        ("rider.toml", Utf8(RiderToml)),
        ("note.md", Utf8("# Note\nWindy week.")),
        ("2026/a.fit", Ride),
        ("2026/copy of a.fit", Ride),
        ("2026/watch.fit", new FitSketch { Start = FitSketch.Evening + 4, Power = _ => null }.Bytes()),
        ("2026/no-offset.fit", new FitSketch { Start = FitSketch.Evening + 86_400, OffsetSeconds = null }.Bytes()),
        ("2026-05-07-1800.csv", Utf8("seconds,Leistung\n" + string.Concat(Enumerable.Range(0, 900).Select(i => $"{i},200\n")))),
        ("track.gpx", Utf8(XmlSketch.Gpx(60))),
        ("log.csv", Utf8("date,start,minutes,rating\n2026-05-05,18:00,2,7\n2026-05-09,,45,3\n")),
        ("export.zip", Packing.Zip(("rider.toml", Utf8("time_zone = \"Asia/Tokyo\"\n")), ("b.fit", new FitSketch { Start = FitSketch.Evening + 200_000 }.Bytes()), ("note-2026-06-08.md", Utf8("Later.")))),
        ("cut.fit", Ride[..(Ride.Length / 2)]),
        ("page.fit", Utf8("<!DOCTYPE html><html></html>")),
        ("empty.fit", []),
        (".DS_Store", [1, 2, 3]),
    ];

    [Fact]
    public void In_whatever_order_files_are_added_they_hold_the_same()
    {
        var expected = Told(Of(null, Files));
        var random = new Random(20260505);
        for (var i = 0; i < 20; i++)
        {
            var shuffled = Files.ToArray();
            random.Shuffle(shuffled);
            Assert.Equal(expected, Told(Of(null, shuffled)));
        }
    }

    [Fact]
    public void A_folder_holds_what_the_same_files_hold_as_streams()
    {
        using var folder = new TempFolder();
        foreach (var (name, bytes) in Files)
            folder.Write(name, bytes);
        Assert.Equal(Told(Reading.Of(folder)), Told(Of(Reading.Rider, Files)));
        Assert.Equal(Files.Length - 1, Reading.Of(folder).FilesSeen);
    }

    [Fact]
    public void Other_plan_tables_in_place_of_those_read_give_what_reading_them_would_have_given()
    {
        var first = ("plan.csv", Utf8("date,kind,minutes\n2026-05-19,hgih,60\n2026-05-20,endurance,60\n"));
        var second = ("plan.csv", Utf8("\uFEFFdate;kind;minutes\n2026-05-19;high;75\n2026-05-21;lang;150\n"));
        var before = Of(null, [.. Files, first]);
        var read = Of(null, [.. Files, second]);
        var changed = before.WithPlan(read.PlanSheets);
        Assert.Equal(read.Plan.Sessions.AsEnumerable(), changed.Plan.Sessions.AsEnumerable());
        Assert.Equal(read.Notices.AsEnumerable(), changed.Notices.AsEnumerable());
        Assert.Contains(changed.Notices, n => n.Sentence.Contains("lang", StringComparison.Ordinal));
        Assert.True(Assert.Single(changed.PlanSheets).ByteOrderMark);
    }

    [Fact]
    public void The_rider_file_decides_on_zone_and_columns_of_what_was_read_before_it()
    {
        var csv = ("local.csv", Utf8("timestamp,Leistung\n2026-05-05T18:00:00,100\n2026-05-05T18:00:01,200\n"));
        var recording = Assert.Single(Of(null, csv, ("rider.toml", Utf8(RiderToml))).Recordings);
        Assert.Equal(Instant.FromUtc(2026, 5, 5, 17, 0), recording.Start);
        Assert.Equal(Offset.FromHours(1), recording.Offset);
        Assert.Equal([100f, 200f], recording.Grid.PowerW!);
    }

    [Fact]
    public void The_rider_that_is_given_comes_before_a_rider_file_among_the_files()
    {
        var read = Of(new Rider(), ("rider.toml", Utf8(RiderToml)), ("a.fit", new FitSketch { OffsetSeconds = null }.Bytes()));
        Assert.Equal(("UTC", true, Offset.Zero), (read.TimeZone, read.TimeZoneIsTheMachines, Assert.Single(read.Recordings).Offset));
        Assert.Equal(RiderToml, read.RiderFile!.Text);
    }

    [Fact]
    public void Of_two_rider_files_the_one_nearest_the_top_counts_and_notes_come_in_order()
    {
        var read = Of(null, Files);
        Assert.Equal(("rider.toml", "Europe/Lisbon"), (read.RiderFile!.File, read.TimeZone));
        Assert.Equal([("export.zip/note-2026-06-08.md", "Later."), ("note.md", "# Note\nWindy week.")], read.Notes.Select(n => (n.File, n.Text)));
    }

    [Fact]
    public void A_rider_file_with_a_mistake_is_handed_on_for_its_mistakes_to_be_told() =>
        Assert.Equal("time_zone = 7", Of(null, ("a.fit", Ride), ("rider.toml", Utf8("time_zone = 7"))).RiderFile!.Text);

    [Fact]
    public void A_stream_that_cannot_seek_is_read_too_archives_included()
    {
        var intake = new Intake(Reading.Rider, DateTimeZone.Utc);
        using var ride = new OneWay(Ride, breaksAt: int.MaxValue);
        using var zip = new OneWay(Packing.Zip(("b.fit", new FitSketch { Start = FitSketch.Evening + 86_400 }.Bytes())), breaksAt: int.MaxValue);
        intake.Add("a.fit", ride);
        intake.Add("export.zip", zip);
        Assert.Equal(["a.fit", "export.zip/b.fit"], intake.Finish().Recordings.Select(r => r.File));
    }

    [Fact]
    public void A_stream_that_breaks_off_is_a_notice_and_the_rest_is_read()
    {
        var intake = new Intake(Reading.Rider, DateTimeZone.Utc);
        using var broken = new OneWay(Ride, breaksAt: 100);
        intake.Add("broken.fit", broken);
        intake.Add("a.fit", new MemoryStream(Ride));
        var read = intake.Finish();
        Assert.Equal("a.fit", Assert.Single(read.Recordings).File);
        Assert.Equal(("broken.fit", "not readable"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void A_name_can_be_added_once_and_must_be_one()
    {
        var intake = new Intake(Reading.Rider, DateTimeZone.Utc);
        intake.Add("a.fit", new MemoryStream(Ride));
        Assert.Throws<ArgumentException>(() => intake.Add("./a.fit", new MemoryStream(Ride)));
        Assert.Throws<ArgumentException>(() => intake.Add("", new MemoryStream(Ride)));
        Assert.Single(intake.Finish().Recordings);
    }

    [Fact]
    public void Hidden_names_are_passed_over_and_the_others_made_fit_to_be_shown()
    {
        var read = Of(Reading.Rider, (".sync/a.fit", Ride), ("__MACOSX/a.fit", Ride), ("x\\..\\b\u202E.fit", Ride));
        Assert.Equal(("x/b\uFFFD.fit", 1), (Assert.Single(read.Recordings).File, read.FilesSeen));
    }

    [Fact]
    public void A_cancelled_intake_throws_the_exception_for_that()
    {
        using var cancel = new CancellationTokenSource();
        var intake = new Intake(Reading.Rider, DateTimeZone.Utc, cancel.Token);
        cancel.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => intake.Add("a.fit", new MemoryStream(Ride)));
    }

    private static FolderContent Of(Rider? rider, params (string Name, byte[] Bytes)[] files)
    {
        var intake = new Intake(rider, DateTimeZone.Utc);
        foreach (var (name, bytes) in files)
            intake.Add(name, new MemoryStream(bytes));
        return intake.Finish();
    }

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);

    /// <summary>All that content says, line by line.</summary>
    private static string Told(FolderContent content)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{content.FilesSeen} {content.TimeZone} {content.TimeZoneIsTheMachines} {content.RiderFile} {string.Join(' ', content.Notes)}");
        foreach (var r in content.Recordings)
            text.AppendLine(CultureInfo.InvariantCulture, $"{r.File} {r.Sport} {r.StartsAt} {r.OffsetFrom} {r.TimerSeconds} {Reading.PowerSum(r)} {string.Join(' ', r.Remarks)}");
        foreach (var row in content.LoggedRides)
            text.AppendLine(row.ToString());
        foreach (var notice in content.Notices)
            text.AppendLine(notice.ToString());
        return text.ToString();
    }

    /// <summary>Gives its bytes once, in small pieces, as a network does.</summary>
    private sealed class OneWay(byte[] bytes, int breaksAt) : Stream
    {
        private int _at;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            if (_at >= breaksAt)
                throw new IOException("The line is dead.");
            var given = Math.Min(Math.Min(count, 50), bytes.Length - _at);
            bytes.AsSpan(_at, given).CopyTo(buffer.AsSpan(offset));
            _at += given;
            return given;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
