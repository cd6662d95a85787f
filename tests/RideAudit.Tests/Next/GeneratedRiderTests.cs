using RideAudit.Rules;
using Xunit.Sdk;

namespace RideAudit.Tests.Next;

/// <summary>Layouts of riders made at random keep every rule, or name the one that gave way.</summary>
public class GeneratedRiderTests
{
    private const int Riders = 120;

    [Fact]
    public void Every_layout_keeps_the_rules_or_names_the_one_that_gave_way()
    {
        var (gave, watch) = (0, System.Diagnostics.Stopwatch.StartNew());
        var lines = new List<string>();
        for (var seed = 0; seed < Riders; seed++)
        {
            var made = GeneratedRider.Of(seed);
            watch.Start();
            var at = watch.ElapsedMilliseconds;
            var document = RiddenWeeks.LayOut(made.Rider, made.Past);
            var ms = watch.ElapsedMilliseconds - at;
            var week = Assert.Single(document.Weeks);
            var wanting = week.Verdicts.Where(v => v.Verdict is Verdict.Watch or Verdict.Broken).Select(v => v.Rule).Where(r => r != "threshold-fresh").ToArray();
            if (week.GaveWay is { } way)
            {
                gave++;
                lines.Add($"{seed} {ms}ms {made.Rider.Plan.WeeklyHours}h {made.Rider.Experience} past {made.Past.Length} {string.Join(",", made.Rider.MinutesFree?.Select(f => $"{f.Key.ToString()[..2]}{f.Value}") ?? made.Rider.Plan.Days.Select(d => d.ToString()[..2]))} {string.Join(",", made.Rider.FixedRides.Select(f => $"{f.Day} {f.Kind} {f.Minutes}"))} {string.Join(",", made.Rider.Exceptions.Select(f => $"{f.Kind} {f.From:MMdd}-{f.To:MMdd}"))}: {RiddenWeeks.Line(week)} {week.Exception} {string.Join("; ", week.Verdicts.Where(v => v.Verdict is Verdict.Watch or Verdict.Broken).Select(v => v.Rule + " " + v.Verdict + " " + v.Sentence))} | {way.Sentence}");
            }
            Assert.All(wanting, r => Assert.Contains(r, week.GaveWay?.Rules ?? []));
        }
        throw new XunitException($"{gave} of {Riders}\n" + string.Join('\n', lines));
    }
}
