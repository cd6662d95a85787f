using System.Diagnostics;
using RideAudit.Plan;
using RideAudit.Rules;
using Xunit.Abstractions;

namespace RideAudit.Tests.Next;

public class Explore(ITestOutputHelper o)
{
    [Fact]
    public void Show()
    {
        foreach (var hours in new[] { 3.0, 4, 5, 6.5, 8, 10, 12, 14, 17 })
            foreach (var e in Enum.GetValues<Experience>())
            {
                var w = Stopwatch.StartNew();
                var doc = RiddenWeeks.LayOut(RiddenWeeks.RiderOf(hours, e), 16);
                o.WriteLine($"== {hours} {e} {w.ElapsedMilliseconds / 16} ms a week");
                foreach (var week in doc.Weeks)
                    o.WriteLine($"{RiddenWeeks.Line(week),-60} {week.Hours:0.0}h {week.Exception} {string.Join(",", week.Verdicts.Where(f => f.Verdict is Verdict.Watch or Verdict.Broken).Select(f => f.Rule + " " + f.Verdict + " " + f.Sentence))} | {week.GaveWay?.Sentence}");
            }
    }
}
