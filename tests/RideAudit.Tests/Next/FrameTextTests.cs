using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using RideAudit.Next;

namespace RideAudit.Tests.Next;

/// <summary>What a layout starts from: the aim, what each day allows, the patterns a coach likes best and the minutes they are given, as a reader has approved them.</summary>
public sealed class FrameTextTests
{
    private const int FewPatterns = 250;

    // Of the hours aimed at, with steps back in the hard sessions and recovery rides in place of easy ones.
    private static readonly (double Share, int Back, int Recoveries)[] Fillings = [(1, 0, 0), (1.2, 1, 1), (0.6, 3, 0)];

    public static TheoryData<string> Names { get; } = [.. SketchedRider.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_layout_starts_from_what_was_approved(string name)
    {
        var sketched = SketchedRider.All[name];
        var start = sketched.Begins;
        var frame = new FrameBuilder(sketched.Rider, sketched.Table, start.Ridden.IsEmpty ? start.StartsOn : start.StartsOn.PlusDays(7))
            .Build(start.StartsOn, start.Past, start.Ridden, sketched.TestDue, [])!;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{frame.Plan.PlannedHours:0.##} h planned, {start.Past.Length} weeks before; aims at {frame.Aim}\n");
        text.Append(CultureInfo.InvariantCulture, $"{frame.Exceptions}{Word(frame.ProposedLighter, "proposed lighter")}{Word(frame.TestDue, "test due")}{Word(frame.BackFromIllness, "back from illness")}{Word(frame.BackFromLongAbsence, "back from long")} {frame.LighterWaits}\n");
        foreach (var d in frame.Days)
            text.Append(CultureInfo.InvariantCulture, $"{d.Date:ddd} {d.Exception} {(d.Ridden is { } ridden ? $"ridden {ridden.Kind} {ridden.RideSeconds / 60:0}" : $"{d.MostMinutes} of {d.Free}")}{Word(!d.MayBeHard, "not hard")}{Word(!d.MayBeHigh, "not high")}{string.Concat(d.Standing.Select(s => $" stands {s.Kind} {s.Minutes} {s.Name}"))}\n");
        var patterns = PatternSearch.Of(frame).ToArray();
        text.Append(CultureInfo.InvariantCulture, $"\n{patterns.Length} patterns, the last {patterns[^1].Taste:0.000}, on average {patterns.Average(p => p.Taste):0.000}\n");
        if (patterns.Length <= FewPatterns)
            text.Append(CultureInfo.InvariantCulture, $"{new WeekSearch(frame).Find()?.Tried} layouts tried before one is the best\n");
        var (minutes, judge) = (new WeekMinutes(frame, new SessionChoice(frame)), new WeekJudge(frame));
        foreach (var (taste, pattern) in patterns.Take(2).Concat(patterns.Skip(2).Where((_, i) => i % (patterns.Length / 3 + 1) == 0)))
        {
            text.Append(CultureInfo.InvariantCulture, $"{taste:0.000} {string.Join(' ', pattern)}\n");
            foreach (var (share, back, recoveries) in Fillings)
                text.Append(CultureInfo.InvariantCulture, $"  {share:0.0} {(minutes.Fill(pattern, (int)(share * frame.Aim.Minutes), back, recoveries) is { } rides ? $"{Line(rides)} ({Judged(rides, judge)})" : "fits no day")}\n");
        }
        Golden.Check("frames.txt", name, text.ToString());
    }

    // What the rules weigh, on paper and on uneven roads, and those that it does not keep.
    private static string Judged(ImmutableArray<ImmutableArray<StockRide>> rides, WeekJudge judge) =>
        string.Create(CultureInfo.InvariantCulture, $"{judge.Weigh(judge.Facts(rides.AsSpan()), rides.AsSpan())} {string.Join(' ', judge.Wanting(rides.AsSpan()).Select(r => r.Id))}").TrimEnd();

    private static string Word(bool isSo, string word) => isSo ? $" {word}" : "";

    private static string Line(ImmutableArray<ImmutableArray<StockRide>> rides) =>
        string.Join(", ", rides.Select(d => d.IsEmpty ? "-" : string.Join(" + ", d.Select(r => $"{r.Name ?? r.Kind.ToString()} {r.Minutes}"))));
}
