using System.Collections.Immutable;

namespace RideAudit.Tests.Simulation;

/// <summary>A session as a coach writes it down: blocks of even riding, and where it is ridden.</summary>
/// <param name="Name">What a test calls it.</param>
/// <param name="On">Where it is ridden.</param>
/// <param name="Blocks">Its blocks in order.</param>
internal sealed record Session(string Name, Surroundings On, ImmutableArray<SessionBlock> Blocks)
{
    private const int WarmUpSeconds = 600;
    private const double EasyPercent = 60;

    public int Seconds => Blocks.Sum(b => b.Seconds);

    /// <summary>The same session elsewhere.</summary>
    public Session Where(Surroundings on) => this with { On = on };

    /// <summary>An even ride on the road.</summary>
    public static Session Even(int minutes, double percent) =>
        new($"{minutes} min at {percent} %", Surroundings.Road, [new SessionBlock(60 * minutes, percent)]);

    /// <summary>The same effort several times in an easy ride: ten minutes easy before, what is left of the time easy after.</summary>
    /// <param name="minutes">The whole ride, min.</param>
    /// <param name="repeats">How often.</param>
    /// <param name="seconds">Each effort, s.</param>
    /// <param name="percent">Its power, % of threshold power.</param>
    /// <param name="restSeconds">Between two efforts, s.</param>
    /// <param name="restPercent">Power between them, % of threshold power.</param>
    public static Session Repeats(int minutes, int repeats, int seconds, double percent, int restSeconds, double restPercent = 50) =>
        Of($"{repeats} × {Length(seconds)} at {percent} %", minutes, Efforts(repeats, seconds, percent, restSeconds, restPercent));

    /// <summary>Several sets of short repeats.</summary>
    public static Session Sets(int minutes, int sets, int repeats, int seconds, double percent, int floatSeconds, int restSeconds) =>
        Of(
            $"{sets} × {repeats} × {seconds}/{floatSeconds} s at {percent} %",
            minutes,
            [.. Enumerable.Range(0, sets).SelectMany(set => new[] { new SessionBlock(set == 0 ? 0 : restSeconds, 50) }
                .Concat(Efforts(repeats, seconds, percent, floatSeconds, 50)))]);

    /// <summary>Any work in an easy ride.</summary>
    public static Session Of(string name, int minutes, ImmutableArray<SessionBlock> work)
    {
        var after = 60 * minutes - WarmUpSeconds - work.Sum(b => b.Seconds);
        if (after < 0)
            throw new ArgumentException($"{name} does not fit into {minutes} min.", nameof(minutes));
        return new Session(name, Surroundings.Road, [new SessionBlock(WarmUpSeconds, EasyPercent), .. work, new SessionBlock(after, EasyPercent)]);
    }

    private static ImmutableArray<SessionBlock> Efforts(int repeats, int seconds, double percent, int restSeconds, double restPercent) =>
        [.. Enumerable.Range(0, 2 * repeats - 1).Select(i => i % 2 == 0 ? new SessionBlock(seconds, percent) : new SessionBlock(restSeconds, restPercent))];

    private static string Length(int seconds) => seconds % 60 == 0 ? $"{seconds / 60} min" : $"{seconds} s";
}
