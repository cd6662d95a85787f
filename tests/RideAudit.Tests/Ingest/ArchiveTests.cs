using RideAudit.Ingest;

namespace RideAudit.Tests.Ingest;

public sealed class ArchiveTests
{
    private static readonly byte[] Wednesday = new FitSketch().Bytes();
    private static readonly byte[] Thursday = new FitSketch { Start = FitSketch.Evening + 86_400 }.Bytes();
    private static readonly byte[] Csv = "timestamp,power\n2026-05-07T17:00:00Z,200\n2026-05-07T17:00:01Z,200\n"u8.ToArray();

    private static string[] Names(FolderContent read) => [.. read.Recordings.Select(r => r.File)];

    [Theory]
    [InlineData("wed.fit.gz")]
    [InlineData("wed.fit")]
    [InlineData("wed")]
    public void A_gzip_file_is_read_whatever_its_name(string name)
    {
        var read = Reading.Of(name, Packing.Gzip(Wednesday));
        Assert.Equal([name], Names(read));
        Assert.Equal(24_000, Reading.PowerSum(read.Recordings[0]));
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void Every_format_is_read_from_gzip() =>
        Assert.Equal(["ride.csv.gz"], Names(Reading.Of("ride.csv.gz", Packing.Gzip(Csv))));

    [Fact]
    public void A_file_packed_twice_on_its_way_is_read_and_three_times_is_named()
    {
        Assert.Single(Reading.Of("wed.fit.gz", Packing.Gzip(Packing.Gzip(Wednesday))).Recordings);
        Assert.Equal("packed too often", Assert.Single(Reading.Of("wed.fit.gz", Packing.Gzip(Packing.Gzip(Packing.Gzip(Wednesday)))).Notices).Problem);
    }

    [Fact]
    public void A_cut_gzip_file_gives_what_it_holds_and_one_notice()
    {
        var packed = Packing.Gzip(new FitSketch { Seconds = 3000, Power = i => 150 + i * 7919 % 100 }.Bytes());
        var read = Reading.Of("wed.fit.gz", packed[..(packed.Length / 2)]);
        Assert.InRange(Assert.Single(read.Recordings).TimerSeconds, 300, 2900);
        Assert.Equal("damaged archive", Assert.Single(read.Notices).Problem);
        Assert.False(read.Notices[0].Unusable);
    }

    [Fact]
    public void A_damaged_gzip_file_is_named()
    {
        var packed = Packing.Gzip(Wednesday);
        packed.AsSpan(10, 30).Fill(0xFF);
        Assert.True(Assert.Single(Reading.Of("wed.fit.gz", packed).Notices).Unusable);
    }

    [Fact]
    public void A_zip_archive_gives_its_rides_under_the_path_inside()
    {
        var zip = Packing.Zip(("inner/wed.fit", Wednesday), ("inner/thu.fit.gz", Packing.Gzip(Thursday)), ("fri.csv", Csv), ("photo.jpg", [0xFF, 0xD8, 0xFF, 0]), ("__MACOSX/inner/._wed.fit", [1, 2, 3]), ("inner/", []));
        var read = Reading.Of("export.zip", zip);
        Assert.Equal(["export.zip/inner/wed.fit", "export.zip/inner/thu.fit.gz", "export.zip/fri.csv"], Names(read));
        Assert.Empty(read.Notices);
    }

    [Fact]
    public void A_zip_archive_is_known_by_its_content()
    {
        Assert.Equal(["export.fit/wed.fit"], Names(Reading.Of("export.fit", Packing.Zip(("wed.fit", Wednesday)))));
        Assert.Equal(["export/wed"], Names(Reading.Of("export", Packing.Zip(("wed", Wednesday)))));
    }

    [Fact]
    public void An_archive_in_an_archive_is_read_and_one_in_that_is_named()
    {
        var inner = Packing.Zip(("wed.fit", Wednesday));
        Assert.Equal(["a.zip/b.zip/wed.fit"], Names(Reading.Of("a.zip", Packing.Zip(("b.zip", inner)))));
        var read = Reading.Of("a.zip", Packing.Zip(("b.zip", Packing.Zip(("c.zip", inner))), ("thu.fit", Thursday)));
        Assert.Equal(["a.zip/thu.fit"], Names(read));
        Assert.Equal(("a.zip/b.zip/c.zip", "packed too deep"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void Names_in_any_script_are_shown_as_they_are()
    {
        var read = Reading.Of("экспорт.zip", Packing.Zip(("Übung/水曜日 ride.fit", Wednesday)));
        Assert.Equal(["экспорт.zip/Übung/水曜日 ride.fit"], Names(read));
    }

    [Fact]
    public void A_name_that_would_move_the_cursor_or_leave_the_folder_is_made_harmless()
    {
        var read = Reading.Of("export.zip", Packing.Zip(("../..\\etc/wed\u001B[2J\n.fit", Wednesday)));
        Assert.Equal(["export.zip/etc/wed\uFFFD[2J\uFFFD.fit"], Names(read));
    }

    [Fact]
    public void Two_entries_of_one_name_are_two_files()
    {
        var read = Reading.Of("export.zip", Packing.Zip(("wed.fit", Wednesday), ("wed.fit", Thursday)));
        Assert.Equal(2, Names(read).Distinct().Count());
    }

    [Fact]
    public void An_encrypted_entry_is_named_with_what_to_do()
    {
        var read = Reading.Of("export.zip", Packing.Encrypted(Packing.Zip(("wed.fit", Wednesday))));
        Assert.Empty(read.Recordings);
        Assert.Equal(("export.zip/wed.fit", "encrypted"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void A_broken_entry_does_not_take_the_others_with_it()
    {
        var zip = Packing.Zip(("wed.fit", Wednesday), ("thu.fit", Thursday));
        zip.AsSpan(45, 25).Fill(0xFF);
        var read = Reading.Of("export.zip", zip);
        Assert.Contains("export.zip/thu.fit", Names(read));
        Assert.Equal("export.zip/wed.fit", Assert.Single(read.Notices).File);
    }

    [Fact]
    public void A_cut_archive_is_named()
    {
        var zip = Packing.Zip(("wed.fit", Wednesday));
        Assert.Equal("damaged archive", Assert.Single(Reading.Of("export.zip", zip[..^30]).Notices).Problem);
    }

    [Fact]
    public void An_archive_without_rides_is_named_once() =>
        Assert.Equal("no rides", Assert.Single(Reading.Of("export.zip", Packing.Zip(("a.txt", "words"u8.ToArray()))).Notices).Problem);

    [Fact]
    public void A_document_that_is_a_zip_archive_inside_is_passed_over() =>
        Assert.Empty(Reading.Of("plan.xlsx", Packing.Zip(("xl/workbook.xml", "<workbook/>"u8.ToArray()))).Notices);

    [Fact]
    public void An_entry_that_unpacks_without_end_is_stopped_and_the_others_are_read()
    {
        using var folder = new TempFolder().Write("export.zip", Packing.Zip(("bomb.fit", new byte[2_000_000]), ("wed.fit", Wednesday)));
        var read = Reading.Of(folder, new ReadLimits { LargestFileBytes = 1_000_000 });
        Assert.Equal(["export.zip/wed.fit"], Names(read));
        Assert.Equal(("export.zip/bomb.fit", "too large"), (Assert.Single(read.Notices).File, read.Notices[0].Problem));
    }

    [Fact]
    public void An_archive_that_unpacks_to_too_much_in_all_is_stopped_with_one_notice()
    {
        using var folder = new TempFolder().Write("export.zip", Packing.Zip([("wed.fit", Wednesday), .. Enumerable.Range(0, 50).Select(i => ($"{i}.fit", new byte[100_000]))]));
        var read = Reading.Of(folder, new ReadLimits { LargestArchiveBytes = 1_000_000 });
        Assert.Equal(["export.zip/wed.fit"], Names(read));
        Assert.Single(read.Notices, n => n.File == "export.zip" && n.Problem == "too large");
    }

    [Fact]
    public void A_gzip_file_that_unpacks_without_end_is_stopped()
    {
        using var folder = new TempFolder().Write("bomb.fit.gz", Packing.Gzip(new byte[2_000_000]));
        Assert.Equal("too large", Assert.Single(Reading.Of(folder, new ReadLimits { LargestFileBytes = 1_000_000 }).Notices).Problem);
    }

    [Fact]
    public void Other_kinds_of_archive_are_named_with_what_to_do() =>
        Assert.Contains("unpack it", Assert.Single(Reading.Of("rides.7z", [.. "7z"u8, 0xBC, 0xAF, 0x27, 0x1C, 0, 0]).Notices).Sentence);
}
