using RideAudit.Cli.Output;

namespace RideAudit.Cli.Tests.Output;

public class WriteFaultTests
{
    [Fact]
    public void A_full_disk_is_called_one()
    {
        if (!File.Exists("/dev/full"))
            return;
        var fault = Assert.Throws<UserError>(() => OutputFile.In("/dev", "full", "/dev/full").Write(s => s.Write(new byte[1 << 16]), CancellationToken.None));
        Assert.Equal("/dev/full cannot be written: the disk is full. Make room, or choose another place.", fault.Message);
    }
}
