using RideAudit.Plan.Blocks;
using RideAudit.Sessions;

namespace RideAudit.Tests.Sessions;

public class FittedSessionTests
{
    [Theory]
    // 49 min as written, an easy end.
    [InlineData("15 min easy, 4 x 6 min 95 %, 3 min easy between, easy to the end", 60, "15 min easy, 4 x 6 min 95 %, 3 min easy between, 12 min easy")]
    [InlineData("15 min easy, 4 x 6 min 95 %, 3 min easy between, easy to the end", 50, "12 min easy, 4 x 6 min 95 %, 3 min easy between, 5 min easy")]
    [InlineData("15 min easy, 4 x 6 min 95 %, 3 min easy between, easy to the end", 48, "10 min easy, 4 x 6 min 95 %, 3 min easy between, 5 min easy")]
    [InlineData("15 min easy, 4 x 6 min 95 %, 3 min easy between, easy to the end", 47, null)]
    // A written cool-down stretches, and what has none gets one.
    [InlineData("10 min easy, 20 min 95 %, 10 min easy", 60, "10 min easy, 20 min 95 %, 30 min easy")]
    [InlineData("10 min easy, 20 min 95 %, 10 min easy", 37, "10 min easy, 20 min 95 %, 7 min easy")]
    [InlineData("10 min easy, 20 min 95 %", 40, "10 min easy, 20 min 95 %, 10 min easy")]
    [InlineData("10 min easy, 20 min 95 %", 30, "10 min easy, 20 min 95 %")]
    [InlineData("20 min 95 %", 10, null)]
    // Short warm-ups stay as short as they are written.
    [InlineData("5 min easy, 20 min 95 %, easy to the end", 30, "5 min easy, 20 min 95 %, 5 min easy")]
    // Easy riding is as long as the day.
    [InlineData("62-68 % to the end", 180, "3 h 62-68 %")]
    [InlineData("60 min 62-68 %", 90, "90 min 62-68 %")]
    [InlineData("15 min easy, 62-68 % to the end", 90, "15 min easy, 75 min 62-68 %")]
    [InlineData("10 min 50-75 % rising, 20 min 95 %, 10 min 50-70 % falling", 45, "10 min 50-75 % rising, 20 min 95 %, 15 min 50-70 % falling")]
    public void Warm_up_and_cool_down_stretch_and_the_work_does_not(string blocks, int minutes, string? fitted)
    {
        var session = FittedSession.Fit(SessionBlocks.Read(blocks, out _)!, minutes);

        Assert.Equal(fitted, session?.Blocks.ToString());
        if (session is not null)
            Assert.Equal(minutes, session.Minutes);
    }

    [Fact]
    public void The_shortest_day_is_the_first_that_fits()
    {
        foreach (var session in SessionLibrary.All)
        {
            var least = FittedSession.LeastMinutes(session.Blocks);
            Assert.Null(FittedSession.Fit(session.Blocks, least - 1));
            Assert.Equal(least, FittedSession.Fit(session.Blocks, least)!.Minutes);
        }
    }

    [Fact]
    public void Repeats_are_written_out_with_what_lies_between_and_each_step_knows_what_it_is_there_for()
    {
        var session = FittedSession.Fit(SessionBlocks.Read("15 min easy, 2 x (2 x 40/20 s 125 %), 5 min easy between, easy to the end", out _)!, 40)!;

        Assert.Equal([900, 40, 20, 40, 20, 300, 40, 20, 40, 20, 960], session.Steps.Select(s => s.Seconds));
        Assert.Equal(
            [StepRole.WarmUp, StepRole.Work, StepRole.Between, StepRole.Work, StepRole.Between, StepRole.Between, StepRole.Work, StepRole.Between, StepRole.Work, StepRole.CoolDown, StepRole.CoolDown],
            session.Steps.Select(s => s.Role));
    }
}
