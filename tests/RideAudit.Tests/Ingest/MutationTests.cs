using NodaTime;
using RideAudit.Ingest;
using RideAudit.Ingest.Archives;

namespace RideAudit.Tests.Ingest;

/// <summary>Damages good files at random places, always the same ones, and reads them.</summary>
public sealed class MutationTests
{
    private const int Mutants = 400;

    private static readonly Dictionary<string, byte[]> Good = new()
    {
        ["ride.fit"] = new FitSketch().Bytes(),
        ["ride.csv"] = [.. "timestamp;power;heart rate\n"u8, .. System.Text.Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, 60).Select(i => $"{XmlSketch.At(i)};200,5;140\n")))],
        ["log.csv"] = "date,start,minutes,average power,rating,note\n2026-05-05,18:00,90,180,7,\"a \"\"b\"\"\"\n2026-05-06,18:00,1:30,180,7,\n"u8.ToArray(),
        ["ride.tcx"] = System.Text.Encoding.UTF8.GetBytes(XmlSketch.Tcx(20)),
        ["ride.gpx"] = System.Text.Encoding.UTF8.GetBytes(XmlSketch.Gpx(20)),
        ["ride.fit.gz"] = Packing.Gzip(new FitSketch().Bytes()),
        ["export.zip"] = Packing.Zip(("a/ride.fit", new FitSketch().Bytes()), ("b.zip", Packing.Zip(("ride.gpx", System.Text.Encoding.UTF8.GetBytes(XmlSketch.Gpx(20)))))),
    };

    public static TheoryData<string> Names => [.. Good.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_damaged_file_never_throws_and_what_it_gives_is_possible(string name)
    {
        var random = new Random(20260505);
        var opener = new FileOpener(new IngestContext(Reading.Rider, DateTimeZone.Utc), ReadLimits.Default, CancellationToken.None, mayReadAgain: true);
        for (var i = 0; i < Mutants; i++)
        {
            var contents = opener.Open(name, Mutate(Good[name], random), ArchiveLayers.None(ReadLimits.Default));
            foreach (var recording in contents.SelectMany(c => c.Recordings))
            {
                Assert.True(recording.TimerSeconds > 0 && recording.ElapsedSeconds >= recording.TimerSeconds - 1, $"{name}, mutant {i}");
                Assert.InRange(recording.Offset.Seconds, -12 * 3600, 14 * 3600);
                Assert.Equal(recording.Grid.Length, recording.Grid.Segments.Sum(s => s.Length));
            }
        }
    }

    private static byte[] Mutate(byte[] good, Random random)
    {
        var bytes = good.ToArray();
        switch (random.Next(4))
        {
            case 0:
                return bytes[..random.Next(bytes.Length)];
            case 1:
                bytes.AsSpan(random.Next(bytes.Length)).Clear();
                return bytes;
            case 2:
                var at = random.Next(bytes.Length);
                return [.. bytes[..at], .. bytes[random.Next(bytes.Length)..]];
            default:
                for (var k = random.Next(1, 20); k > 0; k--)
                    bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
                return bytes;
        }
    }
}
