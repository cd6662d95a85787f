using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;
using RideAudit.Plan;

namespace RideAudit.Cli.Tests.Output;

public class WorkoutFolderTests
{
    [Fact]
    public void Each_session_that_says_what_to_ride_is_a_workout_file()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(80, unicode: true);
        var target = WorkoutFolder.Named(shell.Shell, folder.At("workouts"), folder.At("rides"));
        var said = target.Write(ToCome.Next(), new Rider(), CancellationToken.None);
        Assert.EndsWith("(2 workouts)", said.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Equal(["2026-06-23-five-fives.fit", "2026-06-24-recovery.fit"], Directory.GetFiles(folder.At("workouts")).Select(Path.GetFileName).Order());
        Assert.All(Directory.GetFiles(folder.At("workouts")), f => Assert.Equal(".FIT"u8.ToArray(), File.ReadAllBytes(f)[8..12]));
    }

    [Fact]
    public void Among_the_rides_no_workout_is_written()
    {
        using var folder = new TempFolder();
        using var shell = new TestShell(80, unicode: true);
        folder.Write("rides/log.csv", "date,minutes,rating\n");
        Assert.Throws<UserError>(() => WorkoutFolder.Named(shell.Shell, folder.At("rides/workouts"), folder.At("rides")));
        Assert.Throws<UserError>(() => WorkoutFolder.Named(shell.Shell, folder.At("rides"), folder.At("rides")));
        Assert.False(Directory.Exists(folder.At("rides/workouts")));
    }
}
