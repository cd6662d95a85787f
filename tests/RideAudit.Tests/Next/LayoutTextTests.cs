using System.Globalization;
using System.Text;
using RideAudit.Document.Layouts;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;

namespace RideAudit.Tests.Next;

/// <summary>Weeks laid out for generated riders, every session and sentence of them, as a reader has approved them.</summary>
public sealed class LayoutTextTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(0, 12)];

    public static TheoryData<string> Names { get; } = [.. SketchedRider.All.Keys];

    public static TheoryData<string> Planned { get; } = [.. SketchedRider.All.Where(s => !s.Value.Table.Sessions.IsEmpty).Select(s => s.Key)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_weeks_laid_out_are_those_that_were_approved(int seed)
    {
        var generated = GeneratedRider.Of(seed);
        var (rider, past) = (generated.Rider, generated.Past);
        Check(string.Create(CultureInfo.InvariantCulture, $"generated {seed:00}"), NextBuilder.LayOut(new NextStart { AsOf = RiddenWeeks.Monday, StartsOn = RiddenWeeks.Monday, Past = past }, rider, PlanTable.Empty, 2), rider, past.Length);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_week_laid_out_for_a_rider_who_is_set_apart_by_something_is_the_one_that_was_approved(string name)
    {
        var (sketched, start) = (SketchedRider.All[name], SketchedRider.All[name].Begins);
        Check(name, NextBuilder.LayOut(start, sketched.Rider, sketched.Table, sketched.TestDue ? 2 : 1), sketched.Rider, start.Past.Length);
    }

    /// <summary>What the rules say of a plan table before it is ridden.</summary>
    [Theory]
    [MemberData(nameof(Planned))]
    public void What_is_said_of_a_plan_is_what_was_approved(string name)
    {
        var (sketched, start) = (SketchedRider.All[name], SketchedRider.All[name].Begins);
        Check($"plan: {name}", PlanCheck.Judge(start, sketched.Rider, sketched.Table, 3), sketched.Rider, start.Past.Length);
    }

    private static void Check(string name, NextDocument document, Rider rider, int weeksBefore)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{rider.Experience}, {rider.Plan.WeeklyHours} h, {weeksBefore} weeks ridden before\n");
        foreach (var note in document.Notes)
            text.Append(CultureInfo.InvariantCulture, $"note: {note}\n");
        foreach (var week in document.Weeks)
            text.AppendJoin('\n', Lines(week)).Append('\n');
        text.AppendJoin(", ", PlanRows.Of(document).Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Date:MM-dd} {r.Kind} {r.Minutes} {r.Session}{(r.Exception is { } e ? $" {e}" : "")}"))).Append('\n');
        Golden.Check("layouts.txt", name, text.ToString());
    }

    private static IEnumerable<string> Lines(NextWeekEntry week)
    {
        yield return string.Create(CultureInfo.InvariantCulture,
            $"\n{week.StartsOn:yyyy-MM-dd} from {week.From:yyyy-MM-dd}: {week.Hours:0.##} h of {week.AskedHours:0.##} ({week.AskedOtherwise:0.##}), {week.ExpectedStress:0.0} points, long ride {week.LongRideMinutes}, {week.Exception} {(week.ProposedLighter ? "lighter" : "")}");
        foreach (var day in week.Days)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{day.Date:ddd} {day.Kind} {day.Exception} {(day.RiddenMinutes > 0 ? day.RiddenMinutes : null)} {(day.RiddenStress > 0 ? day.RiddenStress : null):0.0}");
            foreach (var s in day.Sessions)
                yield return string.Create(CultureInfo.InvariantCulture,
                    $"  {s.Kind} {s.Minutes} ({s.MinutesFrom} to {s.MinutesTo}) {s.Session}, {s.ExpectedStress:0.0} points{(s.Stands ? ", stands" : "")}, {s.CalledFor} {s.Sentence}");
        }
        foreach (var finding in week.Verdicts.Where(v => v.Verdict != Verdict.Kept))
            yield return $"{finding.Rule} {finding.Verdict}: {finding.Sentence} {string.Join(", ", finding.Occurrences.SelectMany(o => o.Rides))}";
        if (week.GaveWay is { } gave)
            yield return $"gave way: {string.Join(' ', gave.Rules)}: {gave.Sentence}";
        if (week.SmallestChange is { } change)
            yield return $"change: {change.Sentence}";
        foreach (var note in week.Notes)
            yield return $"note: {note}";
    }
}
