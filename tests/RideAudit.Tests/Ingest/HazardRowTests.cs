namespace RideAudit.Tests.Ingest;

public sealed class HazardRowTests
{
    public static TheoryData<string> Rows => [.. HazardRows.All().Select(r => r.Row)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_hazard_gives_the_recordings_and_notices_named_for_it(string row)
    {
        var (_, bytes, expected) = HazardRows.All().Single(r => r.Row == row);
        var read = Reading.Of("ride.fit", bytes);
        Assert.Equal(expected.Problems, read.Notices.Select(n => n.Problem));
        Assert.Equal(expected.Timers, read.Recordings.Select(r => (int)Math.Round(r.TimerSeconds)));
        Assert.Equal(expected.PowerSeconds, read.Recordings.Sum(Reading.PowerCount));
        Assert.Equal(expected.PowerSum, read.Recordings.Sum(Reading.PowerSum));
        if (!row.StartsWith("A22", StringComparison.Ordinal) && read.Recordings.Length == 1 && !row.StartsWith("E6", StringComparison.Ordinal))
            Assert.Equal(1_778_000_400, read.Recordings[0].Start.ToUnixTimeSeconds());
    }
}
