using RideAudit.Fit.Tests.Hazards;

namespace RideAudit.Fit.Tests.Reading;

public class AllocationTests
{
    /// <summary>Bytes of the channels of one record: a time, five single-precision values and a distance.</summary>
    private const int ChannelBytes = 4 + (5 * 4) + 8;

    [Fact]
    public void Ten_times_the_records_cost_no_more_than_their_channels()
    {
        const int LentRows = 65_536; // 50,000 in arrays of the next power of two

        var small = AllocatedBy(RideBuilder.Whole(5_000).Finish());
        var large = AllocatedBy(RideBuilder.Whole(50_000).Finish());

        Assert.InRange(large - small, long.MinValue, (LentRows * ChannelBytes) + 4_096);
    }

    [Fact]
    public void Redefinitions_that_come_again_cost_nothing_for_each_record()
    {
        var ride = new RideBuilder().Open();
        for (var i = 0; i < 5_000; i++)
            ride.DefineRecords().Ride(i, i + 1);
        var alternating = AllocatedBy(ride.Close(seconds: 5_000).Finish());
        var plain = AllocatedBy(RideBuilder.Whole(5_000).Finish());

        // The first definition leaves room for more rows than records follow, since definitions stand between them.
        Assert.InRange(alternating - plain, long.MinValue, (3 * 5_000 * ChannelBytes) + 4_096);
    }

    private static long AllocatedBy(byte[] file)
    {
        FitDecoder.Decode(file);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var records = FitDecoder.Decode(file).Parts[0].Records;
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(records.Count >= 5_000);
        return allocated;
    }
}
