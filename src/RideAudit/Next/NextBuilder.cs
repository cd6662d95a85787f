using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Lays out weeks to come: the week after the reviewed one, the rest of a week begun, or a programme of several weeks.</summary>
public static class NextBuilder
{
    /// <summary>Weeks of a programme at most.</summary>
    public const int MostWeeks = 16;

    private const int DaysBetweenTests = 42;

    /// <summary>Lays weeks out. Pure: the same input gives the same layout.</summary>
    /// <param name="folder">What the folder holds; without any ride a first week is laid out from the rider file alone.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">From when it is looked, and after which week.</param>
    /// <param name="weeks">How many weeks, 1 to 16.</param>
    /// <param name="table">The plan tables; rows made by hand stand, and nothing is laid out on their days.</param>
    /// <returns>The layout; without weeks, and with a note that says why, when no hours are planned and none can be derived.</returns>
    public static NextDocument Build(FolderContent folder, Rider rider, ReviewRequest request, int weeks = 1, PlanTable? table = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(weeks, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weeks, MostWeeks);
        var start = NextStart.Of(folder, rider, request);
        return LayOut(start, rider, table ?? PlanTable.Empty, weeks) is var document && start.IsEstimated
            ? document with { Notes = document.Notes.Add("Threshold power is an estimate from the recordings; a test entered in the rider file makes the sessions sound.") }
            : document;
    }

    /// <summary>Lays weeks out from a known start.</summary>
    internal static NextDocument LayOut(NextStart start, Rider rider, PlanTable table, int weeks) => LayOut(start, rider, table, weeks, out _);

    /// <summary>Lays weeks out from a known start.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="table">The plan tables.</param>
    /// <param name="weeks">How many weeks, 1 or more.</param>
    /// <param name="ridden">The weeks before and those laid out, ridden exactly so.</param>
    internal static NextDocument LayOut(NextStart start, Rider rider, PlanTable table, int weeks, out ImmutableArray<WeekFacts> ridden)
    {
        // A week begun stays as light as it was laid out; whether one to come is lighter is asked again.
        var frames = new FrameBuilder(start.Known(rider), table, start.Ridden.IsEmpty ? start.StartsOn : start.StartsOn.PlusDays(7));
        var past = start.Past;
        var over = start.Ridden;
        var proposed = ImmutableArray<PlanException>.Empty;
        var lastTest = rider.Thresholds.LastOrDefault(t => t.From <= start.StartsOn)?.From ?? start.StartsOn;
        var entries = ImmutableArray.CreateBuilder<NextWeekEntry>();
        var testWaits = false;
        PlanInForce? plan = null;
        for (var i = 0; i < weeks; i++)
        {
            var startsOn = start.StartsOn.PlusDays(7 * i);
            var testDue = weeks > 1 && Period.DaysBetween(lastTest, startsOn) >= DaysBetweenTests;
            if (frames.Build(startsOn, past, over, testDue, proposed) is not { } frame)
                break;
            frame = frame with { TestWaited = testWaits };
            plan ??= frame.Plan;
            var search = new WeekSearch(frame);
            if (search.Find() is not { } layout)
                break;
            entries.Add(NextWriter.Week(frame, layout, search.Judge, table, MissedSessions.Of(frame, layout, table)));
            if (frame.ProposedLighter)
                proposed = proposed.Add(new PlanException(startsOn, startsOn.PlusDays(6), ExceptionKind.Lighter));
            if (layout.Rides.Any(d => d.Any(r => r.Purpose == SessionPurpose.Test)))
                (lastTest, testWaits) = (startsOn, false);
            else
                testWaits |= frame is { TestDue: true, IsLighter: false };
            past = past.Add(layout.Facts);
            over = [];
        }
        ridden = past;
        plan ??= PlanInForce.For(rider, [], start.StartsOn);
        return new NextDocument
        {
            AsOf = start.AsOf,
            Rider = NextWriter.Rider(plan, start.Zone),
            Weeks = entries.ToImmutable(),
            Notes = entries.Count > 0 ? [] : [plan.PlannedHours is > 0 ? "No layout: the rider file leaves no day to ride on." : "No layout: the rider file plans no hours, and there are no weeks before to take them from."],
        };
    }
}
