using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Tests.Ingest;

public sealed class FolderTests
{
    private static readonly byte[] Ride = new FitSketch().Bytes();
    private static readonly byte[] Later = new FitSketch { Start = FitSketch.Evening + 86_400 }.Bytes();

    [Fact]
    public void Files_are_read_at_any_depth_in_the_order_of_their_rides()
    {
        using var folder = new TempFolder().Write("2026/mai/зaпись 1.fit", Later).Write("a b.fit", Ride);
        var read = Reading.Of(folder);
        Assert.Equal(["a b.fit", "2026/mai/зaпись 1.fit"], read.Recordings.Select(r => r.File));
        Assert.Equal(2, read.FilesSeen);
    }

    [Fact]
    public void The_same_bytes_under_two_names_count_once_the_first_by_name()
    {
        using var folder = new TempFolder().Write("b.fit", Ride).Write("a.fit.gz", Packing.Gzip(Ride)).Write("c.zip", Packing.Zip(("b.fit", Ride)));
        var read = Reading.Of(folder);
        Assert.Equal("a.fit.gz", Assert.Single(read.Recordings).File);
        Assert.Equal(["The same file as a.fit.gz, which is kept.", "The same file as a.fit.gz, which is kept."], read.Notices.Select(n => n.Sentence));
    }

    [Fact]
    public void The_same_bytes_on_two_days_are_two_rides_where_the_date_is_in_the_files_name()
    {
        var rows = System.Text.Encoding.UTF8.GetBytes("seconds,power\n" + string.Concat(Enumerable.Range(0, 900).Select(i => $"{i},200\n")));
        using var folder = new TempFolder().Write("2026-05-05-1800.csv", rows).Write("2026-05-07-1800.csv", rows);
        var read = Reading.Of(folder);
        Assert.Equal(["2026-05-05-1800.csv", "2026-05-07-1800.csv"], read.Recordings.Select(r => r.File));
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void The_same_ride_from_two_devices_counts_once_the_one_with_power()
    {
        using var folder = new TempFolder()
            .Write("a-watch.fit", new FitSketch { Start = FitSketch.Evening + 4, Power = _ => null }.Bytes())
            .Write("b-computer.fit", Ride);
        var read = Reading.Of(folder);
        Assert.Equal("b-computer.fit", Assert.Single(read.Recordings).File);
        Assert.Equal(("a-watch.fit", "The same riding as b-computer.fit, which is kept."), (Assert.Single(read.Notices).File, read.Notices[0].Sentence));
    }

    [Fact]
    public void A_head_unit_that_died_is_named_beside_the_watch_with_the_minutes_each_gave()
    {
        using var folder = new TempFolder()
            .Write("unit.fit", new FitSketch { Seconds = 1200, Power = i => 200 + i % 3 }.Bytes())
            .Write("watch.fit", new FitSketch { Seconds = 10_140, Power = _ => null }.Bytes());
        var read = Reading.Of(folder);
        Assert.Equal(10_140, read.Recordings.Sum(r => r.TimerSeconds));
        Assert.Equal(
            ("watch.fit", "The same riding as unit.fit: that gave 20 minutes, this one 149 minutes that it lacks."),
            (Assert.Single(read.Notices).File, read.Notices[0].Sentence));
    }

    [Fact]
    public void The_same_ride_in_three_formats_counts_once()
    {
        using var folder = new TempFolder().Write("a.fit", Ride).Write("a.tcx", XmlSketch.Tcx(120)).Write("a.gpx", XmlSketch.Gpx(120));
        Assert.Equal("a.fit", Assert.Single(Reading.Of(folder).Recordings).File);
    }

    [Fact]
    public void A_file_that_is_still_being_written_is_named()
    {
        var notice = Assert.Single(Reading.Of("ride.fit", Array.Empty<byte>()).Notices);
        Assert.Equal("empty file", notice.Problem);
        Assert.Contains("still being copied", notice.Sentence);
    }

    [Fact]
    public void What_this_program_wrote_before_is_no_noise()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride)
            .Write("review-2026-05-04.pdf", "%PDF-1.7").Write("review-2026-05-04.png", [0x89, .. "PNG"u8]).Write("review.json", "{ \"schema\": \"rideaudit-review/1\" }")
            .Write("rider.toml", "label = \"Rider A\"").Write("note.md", "# Note\nA good week.").Write("week.ics", "BEGIN:VCALENDAR")
            .Write("rides.csv", "file,parts,starts_at,duration_seconds,elapsed_seconds\nride.fit,,2026-05-05T18:00:00+01:00,120,120\n")
            .Write("weeks.csv", "starts_on,iso_week,finished,hours,ride_count\n2026-05-04,2026-W19,true,1,1\n")
            .Write("rules.csv", "rule,limits,evidence,source,sentence\nrest-days,,,,\n");
        var read = Reading.Of(folder);
        Assert.Empty(read.Notices);
        Assert.Single(read.Recordings);
        Assert.Empty(read.LoggedRides);
    }

    [Fact]
    public void Hidden_files_and_folders_are_passed_over()
    {
        using var folder = new TempFolder().Write(".sync/ride.fit", Ride).Write("._ride.fit", [1, 2, 3]);
        var read = Reading.Of(folder);
        Assert.Equal((0, 0), (read.FilesSeen, read.Notices.Length));
    }

    [Fact]
    public void A_broken_link_is_named_and_the_rest_is_read()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride);
        File.CreateSymbolicLink(folder.At("gone.fit"), folder.At("nowhere.fit"));
        File.CreateSymbolicLink(folder.At("self.fit"), folder.At("self.fit"));
        var read = Reading.Of(folder);
        Assert.Single(read.Recordings);
        Assert.Equal([("gone.fit", "broken link"), ("self.fit", "broken link")], read.Notices.Select(n => (n.File, n.Problem)));
    }

    [Fact]
    public void Links_that_lead_round_in_a_circle_end()
    {
        using var folder = new TempFolder().Write("a/ride.fit", Ride).Write("b/later.fit", Later);
        Directory.CreateSymbolicLink(folder.At("a/to-b"), folder.At("b"));
        Directory.CreateSymbolicLink(folder.At("b/to-a"), folder.At("a"));
        Directory.CreateSymbolicLink(folder.At("b/here"), folder.At("b"));
        Directory.CreateSymbolicLink(folder.At("up"), folder.Path);
        Directory.CreateSymbolicLink(folder.At("above"), Path.GetDirectoryName(folder.Path)!);
        var read = Reading.Of(folder);
        Assert.Equal(["a/ride.fit", "b/later.fit"], read.Recordings.Select(r => r.File));
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_link_to_a_folder_elsewhere_is_followed()
    {
        using var elsewhere = new TempFolder().Write("ride.fit", Ride);
        using var folder = new TempFolder();
        Directory.CreateSymbolicLink(folder.At("disk"), elsewhere.Path);
        Assert.Equal("disk/ride.fit", Assert.Single(Reading.Of(folder).Recordings).File);
    }

    [Fact]
    public void A_file_that_another_program_holds_is_named_and_the_rest_is_read()
    {
        using var folder = new TempFolder().Write("held.fit", Later).Write("ride.fit", Ride);
        using var held = new FileStream(folder.At("held.fit"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        var read = Reading.Of(folder);
        Assert.Equal("ride.fit", Assert.Single(read.Recordings).File);
        Assert.Equal(("held.fit", "not readable"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void A_pipe_or_device_is_never_read()
    {
        using var folder = new TempFolder();
        File.CreateSymbolicLink(folder.At("endless.fit"), "/dev/zero");
        Assert.Equal("empty file", Assert.Single(Reading.Of(folder).Notices).Problem);
    }

    [Fact]
    public void A_file_of_a_gigabyte_gets_a_notice_and_takes_no_memory()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride);
        using (var huge = new FileStream(folder.At("huge.fit"), FileMode.Create))
        {
            huge.Write(Ride.AsSpan(0, 14));
            huge.SetLength(1L << 30);
        }
        var before = GC.GetTotalAllocatedBytes();
        var read = Reading.Of(folder);
        Assert.InRange(GC.GetTotalAllocatedBytes() - before, 0, 100 << 20);
        Assert.Single(read.Recordings);
        Assert.Equal(("huge.fit", "too large"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void A_note_of_a_gigabyte_gets_a_notice_though_no_file_so_large_is_opened()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride);
        using (var huge = new FileStream(folder.At("note.md"), FileMode.Create))
            huge.SetLength(1L << 30);
        var notice = Assert.Single(Reading.Of(folder).Notices);
        Assert.Equal(("note.md", "too large"), (notice.File, notice.Problem));
        Assert.Contains("larger than the 64 KB", notice.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_gigabyte_that_never_promised_a_ride_is_passed_over()
    {
        using var folder = new TempFolder();
        using (var huge = new FileStream(folder.At("film.mkv"), FileMode.Create))
            huge.SetLength(1L << 30);
        Assert.Empty(Reading.Of(folder).Notices);
    }

    [Fact]
    public void Years_of_files_are_read_once_each_with_progress()
    {
        using var folder = new TempFolder();
        for (var day = 0; day < 400; day++)
            folder.Write($"{2025 + day / 365}/{day}.fit", new FitSketch { Start = FitSketch.Evening - (uint)day * 86_400, OffsetSeconds = null }.Bytes());
        var reports = new System.Collections.Concurrent.ConcurrentBag<IngestProgress>();
        var read = FolderReader.Read(folder.Path, Reading.Rider, NodaTime.DateTimeZone.Utc, new Sink(reports.Add), CancellationToken.None);
        Assert.Equal(400, read.Recordings.Length);
        Assert.Empty(read.Notices);
        Assert.Equal(Enumerable.Range(1, 400), reports.Select(r => r.FilesDone).Order());
    }

    [Fact]
    public void A_cancelled_reading_stops_with_the_exception_for_that()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride);
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => FolderReader.Read(folder.Path, new Rider(), NodaTime.DateTimeZone.Utc, null, cancel.Token));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said() =>
        Assert.Throws<DirectoryNotFoundException>(() => FolderReader.Read("/no/such/folder", new Rider(), NodaTime.DateTimeZone.Utc, null, CancellationToken.None));

    [Fact]
    public void Reading_changes_nothing_in_the_folder()
    {
        using var folder = new TempFolder().Write("ride.fit", Ride).Write("export.zip", Packing.Zip(("../later.fit", Later)));
        var before = Directory.GetFileSystemEntries(folder.Path, "*", SearchOption.AllDirectories).Select(f => (f, File.GetLastWriteTimeUtc(f))).ToArray();
        Reading.Of(folder);
        Assert.Equal(before, Directory.GetFileSystemEntries(folder.Path, "*", SearchOption.AllDirectories).Select(f => (f, File.GetLastWriteTimeUtc(f))));
    }

    private sealed class Sink(Action<IngestProgress> take) : IProgress<IngestProgress>
    {
        public void Report(IngestProgress value) => take(value);
    }
}
