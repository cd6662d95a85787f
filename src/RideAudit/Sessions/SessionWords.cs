using System.Collections.Immutable;
using RideAudit.Formatting;
using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>A session as a sentence, told in what the rider has: watts, else beats, else feel; never a share of something not known.</summary>
internal sealed class SessionWords
{
    /// <summary>Below this heart rate has not arrived when the effort is over, s.</summary>
    /// <remarks>Common practice, no source.</remarks>
    internal const int HeartRateNeeds = 180;

    private readonly SessionMeasures _measures;
    private readonly HashSet<EffortMeasure> _said = [];

    private SessionWords(SessionMeasures measures) => _measures = measures;

    /// <summary>The sentence: <c>15 min easy (138 to 163 W); 4 × 6 min at 265 to 275 W, 3 min easy between; 12 min easy.</c></summary>
    /// <param name="measures">What the rider knows.</param>
    public static string Of(FittedSession session, SessionMeasures measures)
    {
        var words = new SessionWords(measures);
        var items = session.Blocks.Items;
        return Shown.Sentence(string.Join("; ", items.Select((item, i) => i > 0 && i == items.Length - 1 ? words.Last(item) : words.Of(item))));
    }

    // Nobody counts the seconds of a cool-down.
    private string Last(Block block) => block is Block.Stretch { Seconds: { } seconds } stretch && seconds % 60 != 0 && EffortShares.IsEasy(stretch.Effort)
        ? $"{Target(stretch.Effort, seconds)} to the end"
        : Of(block);

    private string Of(Block block) => block switch
    {
        Block.Stretch { Seconds: { } seconds } stretch => $"{Length(seconds)} {Target(stretch.Effort, seconds)}",
        Block.Repeat repeat => $"{repeat.Count}{Shown.Joint}×{Shown.Joint}{Inside(repeat.Inside)}{(repeat is { Between: { } between, Count: > 1 } ? $", {Of(between)} between" : "")}",
        _ => "",
    };

    private string Inside(ImmutableArray<Block> inside) =>
        inside is [Block.Stretch only] ? Of(only) : $"({Shown.List(inside.Select(Of))})";

    private string Target(Effort effort, int seconds)
    {
        var target = EffortTarget.Of(effort, seconds, _measures);
        var word = effort.Measure switch { EffortMeasure.Easy => "easy", EffortMeasure.VeryEasy => "very easy", EffortMeasure.AllOut => "all out", _ => null };
        if (word is null)
            return $"at {Direction(effort, target)}";
        // What easy means is said once.
        return target.In == EffortTarget.Unit.None || !_said.Add(effort.Measure) ? word : $"{word} ({Span(target)})";
    }

    private static string Direction(Effort effort, EffortTarget target) =>
        effort.Ramps ? $"{Span(target)}, {(effort.From < effort.To ? "rising" : "falling")}" : Span(target);

    private static string Span(EffortTarget target) => target.In switch
    {
        EffortTarget.Unit.Watts => Shown.Range(target.Low, target.High, "W"),
        EffortTarget.Unit.Beats => Shown.Range(target.Low, target.High, "bpm"),
        _ => target.Low.Whole() == target.High.Whole()
            ? $"feel {Shown.Number(target.High)} of 10"
            : $"feel {Shown.Number(target.Low)} to {Shown.Number(target.High)} of 10",
    };

    private static string Length(int seconds) => seconds switch
    {
        _ when seconds % 60 == 0 => Shown.Length(seconds),
        < 120 => Shown.Quantity(seconds, "s"),
        _ => Shown.Length(seconds / 60 * 60) + Shown.Joint + Shown.Quantity(seconds % 60, "s"),
    };
}
