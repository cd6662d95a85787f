using System.Globalization;
using System.Text;
using NodaTime;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Plan.Table;

namespace RideAudit.Tests.Ingest;

/// <summary>Twice the input takes twice the work in every reader, also of what was made to take more. Steps are counted in allocated bytes, never timed.</summary>
public sealed class LinearReadingTests
{
    private const double MostGrowth = 2.5;

    private static readonly Dictionary<string, (string Name, Func<int, byte[]> Make, int Size)> Rides = new()
    {
        ["records"] = ("a.fit", n => new FitSketch { Seconds = n }.Bytes(), 20_000),
        ["rows"] = ("a.csv", n => Text("timestamp,power\n", n, i => $"{XmlSketch.At(i)},200\n"), 4000),
        ["rows that step back"] = ("a.csv", n => Text("timestamp,power\n", n, i => $"{XmlSketch.At(i % 2 * 5_000_000 + i)},200\n"), 4000),
        ["cells that are no numbers"] = ("a.csv", n => Text("timestamp,power\n", n, i => $"{XmlSketch.At(i)},x{i}\n"), 4000),
        ["columns"] = ("a.csv", n => Text("timestamp,power", n, _ => ",x"), 40_000),
        ["quotes"] = ("a.csv", n => Text("timestamp,power\n\"", n, _ => "\"\""), 100_000),
        ["logged rides of a day"] = ("a.csv", n => Text("date,minutes,rating\n", n, _ => "2026-05-05,20,3\n"), 1500),
        ["activities"] = ("a.tcx", n => Text("<TrainingCenterDatabase><Activities>", n, i => $"<Activity><Lap StartTime=\"{XmlSketch.At(i * 100)}\"><TotalTimeSeconds>60</TotalTimeSeconds></Lap></Activity>"), 1500),
        ["levels"] = ("a.tcx", n => Text("<TrainingCenterDatabase>", n, _ => "<a>"), 10_000),
        ["points"] = ("a.gpx", n => Text("<gpx><trk><trkseg>", n, i => $"<trkpt><time>{XmlSketch.At(i)}</time></trkpt>"), 4000),
        ["entries"] = ("a.zip", n => Packing.Zip([.. Enumerable.Range(0, n).Select(i => ($"{i}.fit", "x"u8.ToArray()))]), 1500),
        ["entries of one name"] = ("a.zip", n => Packing.Zip([.. Enumerable.Range(0, n).Select(i => ("same.fit", "x"u8.ToArray()))]), 300),
    };

    public static TheoryData<string> Shapes => [.. Rides.Keys];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Twice_the_file_takes_about_twice_the_work(string shape)
    {
        var (name, make, size) = Rides[shape];
        var growth = Work.GrowthOf(
            make,
            bytes =>
            {
                var intake = new Intake(Reading.Rider, DateTimeZone.Utc);
                intake.Add(name, new MemoryStream(bytes, writable: false));
                intake.Finish();
            },
            size);
        Assert.InRange(growth, 0, MostGrowth);
    }

    [Theory]
    [InlineData("", "[[threshold]]\nfrom = 2026-01-01\npower_w = 200\n")]
    [InlineData("", "= x\n")]
    [InlineData("", "[a#]\n")]
    [InlineData("", "k# = 1\n")]
    [InlineData("label = \"", "x")]
    public void Twice_the_rider_file_takes_about_twice_the_work(string start, string repeated) => Assert.InRange(
        Work.GrowthOf(n => Text(start, n, i => Numbered(repeated, i)), bytes => RiderFileReader.Read(Encoding.UTF8.GetString(bytes), "rider.toml"), 4000), 0, MostGrowth);

    [Theory]
    [InlineData("date,kind,minutes,session\n", "2026-05-05,endurance,60,s#\n")]
    [InlineData("date,kind,minutes,session\n", "x#,endurance,60,s\n")]
    [InlineData("date,kind,minutes", ",x#")]
    [InlineData("date,kind,minutes,blocks\n2026-05-05,high,60,\"", "2 x (")]
    [InlineData("date,kind,minutes,blocks\n2026-05-05,high,60,\"", "1 min easy, ")]
    public void Twice_the_plan_table_takes_about_twice_the_work(string start, string repeated) => Assert.InRange(
        Work.GrowthOf(n => Text(start, n, i => Numbered(repeated, i)), bytes => PlanTableReader.Read(Encoding.UTF8.GetString(bytes), "plan.csv"), 3000), 0, MostGrowth);

    private static string Numbered(string text, int i) => text.Replace("#", i.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private static byte[] Text(string start, int count, Func<int, string> repeated) =>
        Encoding.UTF8.GetBytes(start + string.Concat(Enumerable.Range(0, count).Select(repeated)));
}
