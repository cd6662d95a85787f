using System.Text.Json;
using RideAudit.Fit.Messages;
using RideAudit.Fit.Tests.Hazards;

namespace RideAudit.Fit.Tests;

/// <summary>
/// Sums that the format owner's JavaScript decoder (@garmin/fitsdk 21.217.0) gives for our own files, written by
/// tests/crosschecks/run.sh, which compares record for record where node is installed.
/// </summary>
public class OutsideDecoderTests
{
    private static readonly Dictionary<string, Dictionary<string, JsonElement>> Expected =
        JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, JsonElement>>>(
            File.ReadAllText(Repository.Path("tests", "crosschecks", "expected.json")))!;

    public static TheoryData<string> Files => [.. Expected.Keys];

    [Theory]
    [MemberData(nameof(Files))]
    public void The_official_decoder_gives_the_same_counts_and_sums(string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(HazardTable.Folder, "good", name));
        var parts = FitDecoder.Decode(bytes).Parts;

        foreach ((var field, var value) in Expected[name])
        {
            if (field == "records")
                Assert.Equal(value.GetInt32(), parts.Sum(p => p.Records.Count));
            else
                AssertSum(value, [.. parts.SelectMany(p => Column(p.Records, field)).Where(v => !double.IsNaN(v))]);
        }
    }

    [Fact]
    public void Most_of_our_files_have_expected_sums() => Assert.True(Expected.Count > 80);

    private static void AssertSum(JsonElement expected, double[] values)
    {
        Assert.Equal(expected.GetProperty("values").GetInt32(), values.Length);
        var sum = expected.GetProperty("sum").GetDouble();
        Assert.InRange(values.Sum(), sum - 0.005, sum + 0.005);
    }

    private static double[] Column(RecordChannels records, string field) => field switch
    {
        "time" => [.. records.Timestamps.ToArray().Select(t => t == RecordChannels.NoTime ? double.NaN : t)],
        "power" => Widen(records.Power),
        "heart rate" => Widen(records.HeartRate),
        "cadence" => Widen(records.Cadence),
        "distance" => records.DistanceM.ToArray(),
        "speed" => Widen(records.SpeedMps),
        "altitude" => Widen(records.AltitudeM),
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "no such field"),
    };

    private static double[] Widen(ReadOnlySpan<float> values) => [.. values.ToArray().Select(v => (double)v)];
}
