using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Held;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Next;

/// <summary>The whole way: weeks laid out into a plan table, ridden on simulated roads into ride files, read, laid out again and reviewed.</summary>
public class RiddenFilesTests
{
    private static readonly DateTimeZone Lisbon = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];

    [Theory]
    [InlineData(4.5, Experience.New, 1, false)]
    [InlineData(6.5, Experience.Regular, 2, true)]
    [InlineData(11, Experience.Racing, 3, false)]
    public void Five_weeks_ridden_as_laid_out_are_reviewed_without_a_broken_rule_and_every_session_as_done(double hours, Experience experience, int seed, bool asCsv)
    {
        using var folder = new TempFolder();
        var rider = RiddenWeeks.RiderOf(hours, experience) with { TimeZone = Lisbon };
        var sheet = PlanSheet.New("plan.csv");
        var found = new List<string>();
        for (var i = 0; i < 5; i++)
        {
            var monday = RiddenWeeks.Monday.PlusDays(7 * i);
            var before = Read(folder, rider);
            var document = NextBuilder.Build(before, rider, Request(monday), 1, before.Plan);
            var week = document.Weeks.Single();
            Assert.Equal(monday, week.StartsOn);
            (sheet, _) = PlanRows.Update(sheet, document, before.Plan);
            folder.Write("plan.csv", PlanTableWriter.Write(sheet));
            Ride(folder, week, rider, seed * 100 + i, asCsv);
            var review = ReviewBuilder.Review(Read(folder, rider), rider, Request(monday.PlusDays(7)))!;
            Assert.Equal(monday, review.Week.StartsOn);
            Assert.All(review.Week.PlannedAndRidden, h => Assert.Equal(HeldOutcome.Done, Assert.Single(h.Outcomes)));
            found.AddRange(review.Findings.Where(f => f.Verdict is Verdict.Watch or Verdict.Broken).Select(f => $"{i} {f.Verdict} {f.Rule}: {f.Sentence} [{RiddenWeeks.Line(week)}]"));
            foreach (var held in review.Week.PlannedAndRidden.Where(h => !h.Repeats.IsEmpty))
                Assert.DoesNotContain("not ridden", held.RepeatsSentence!, StringComparison.Ordinal);
        }
        Assert.True(found.TrueForAll(f => !f.Contains($" {Verdict.Broken} ", StringComparison.Ordinal)) && found.Count <= 1, string.Join('\n', found));
    }

    private static FolderContent Read(TempFolder folder, Rider rider) => FolderReader.Read(folder.Path, rider, Lisbon, null, default);

    private static ReviewRequest Request(LocalDate asOf) => new() { Today = asOf, AsOf = asOf };

    private static void Ride(TempFolder folder, NextWeekEntry week, Rider rider, int seed, bool asCsv)
    {
        foreach (var day in week.Days)
        {
            foreach (var session in day.Sessions)
            {
                var start = (day.Date + new LocalTime(9, 0)).InZoneStrictly(Lisbon).ToOffsetDateTime();
                var ride = OnTheRoad.Simulated(session, session.Minutes, rider, seed * 10 + (int)day.Date.DayOfWeek);
                folder.Write($"{SimulatedFiles.NameAt(start)}.{(asCsv ? "csv" : "fit")}", asCsv ? SimulatedFiles.Csv(ride, start) : SimulatedFiles.Fit(ride, start));
            }
        }
    }
}
