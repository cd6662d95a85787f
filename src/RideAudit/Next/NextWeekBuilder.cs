using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Lays out the week after the reviewed one, within the plan's days and limits, and has the rules judge it.</summary>
public static class NextWeekBuilder
{

    /// <summary>Lays out a week. Pure: the same input gives the same layout.</summary>
    /// <param name="folder">What the folder holds.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">Which week was reviewed, from when.</param>
    /// <returns>The layout; null when the folder has no usable ride before the as-of date.</returns>
    public static NextWeekDocument? Build(FolderContent folder, Rider rider, ReviewRequest request)
    {
        if (Workbook.Open(folder, rider, request) is not { } book)
            return null;
        var plan = PlanFor(rider, book);
        var (threshold, estimated) = ThresholdOf(book);
        var document = LayOut(book.Week.StartsOn.PlusDays(7), plan, book.Weeks, threshold, estimated);
        return document with { AsOf = book.AsOf, Rider = document.Rider with { TimeZone = folder.TimeZone } };
    }

    /// <summary>Lays out the week that starts on a day.</summary>
    /// <param name="startsOn">Its first day: seven days after the last week's.</param>
    /// <param name="plan">The plan in force for it.</param>
    /// <param name="past">Every week up to it, oldest first, at least one.</param>
    /// <param name="threshold">Threshold power, for the watts in the sentences; null when unknown.</param>
    /// <param name="estimated">That power is an estimate.</param>
    internal static NextWeekDocument LayOut(
        LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, Watts? threshold, bool estimated = false)
    {
        var exceptions = WeekExceptions.For(plan.Rider.Exceptions, startsOn);
        var notes = ImmutableArray.CreateBuilder<string>();
        if (exceptions.Event || exceptions.Away)
            return NextWeekExcepted.Document(startsOn, plan, past, exceptions);
        var exception = exceptions.Leading;
        var aim = NextWeekAim.For(plan, past);
        if (exception is null && AsksForLighterWeek(startsOn, aim.Plan, past))
        {
            exception = ExceptionKind.Lighter;
            notes.Add($"None of the last {Shown.Count(plan.Limits.LighterWatchWeeks - 1, "week")} was lighter: this one is laid out as lighter. Add it to the rider file as [[exception]] with kind = \"lighter\", so that its review knows.");
        }
        if (new NextWeekLayout(startsOn, aim.Plan, past, exception).Find() is not { } found)
            return NextWeekExcepted.Empty(startsOn, plan, Why(plan));
        var document = Document(startsOn, plan, past, exception, found.Days, threshold);
        new NextWeekNotes(notes, startsOn, plan, aim, past, exception).Add(found);
        if (estimated && threshold is { } watts)
            notes.Add($"Threshold power is an estimate from the recordings ({Shown.Watts(watts.Value)}), and so are the watts above: a test entered in the rider file makes them sound.");
        return document with { Notes = notes.ToImmutable() };
    }

    private static NextWeekDocument Document(
        LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, ExceptionKind? exception,
        ImmutableArray<PlannedDay> days, Watts? threshold)
    {
        var words = new PlannedWords(plan, threshold);
        return NextWeekExcepted.Empty(startsOn, plan, []) with
        {
            Exception = exception,
            Hours = days.Sum(d => d.Minutes) / 60.0,
            ExpectedStress = days.Sum(PlannedRides.StressOf),
            Days = [.. days.Select((d, i) => new LayoutDayEntry
            {
                Date = startsOn.PlusDays(i), Kind = d.Kind, Minutes = d.Minutes, ExpectedStress = PlannedRides.StressOf(d), Sentence = words.Of(d),
            })],
            Findings = RuleBook.Standard.Judge(NextWeekLayout.Judged(startsOn, plan, past, exception, days)),
        };
    }

    // Asked of a week of the hours aimed at: the rule looks at nothing but hours.
    private static bool AsksForLighterWeek(LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past)
    {
        if (plan.PlannedHours is not { } hours)
            return false;
        ImmutableArray<PlannedDay> full = [new PlannedDay(DayKind.Endurance, (int)(hours * 60)), .. Enumerable.Repeat(PlannedDay.Rest, 6)];
        return LighterWeek.Asks(new JudgedWeek(NextWeekLayout.Judged(startsOn, plan, past, null, full)));
    }

    private static PlanInForce PlanFor(Rider rider, Workbook book) => PlanInForce.For(
        rider,
        [.. book.Weeks.Select(w => new WeekHours(w.StartsOn, w.Hours, !WeekExceptions.For(rider.Exceptions, w.StartsOn).None))],
        book.Week.StartsOn.PlusDays(7));

    private static (Watts? Power, bool Estimated) ThresholdOf(Workbook book)
    {
        if (book.Plan.Rider.Thresholds.LastOrDefault(t => t.Power is not null && t.From <= book.AsOf)?.Power is { } entered)
            return (entered, false);
        var last = book.Figures.LastOrDefault(f => f.Threshold is not null)?.Threshold;
        return (last?.Power, last?.IsEstimate ?? false);
    }

    private static ImmutableArray<string> Why(PlanInForce plan) => plan.PlannedHours is > 0
        ? ["No layout: the rider file leaves no day to ride on."]
        : ["No layout: the rider file plans no hours, and there are no weeks before to take them from."];
}
