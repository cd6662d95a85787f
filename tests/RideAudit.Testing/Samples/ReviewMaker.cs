using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Testing.Samples;

/// <summary>Makes review documents whose sums follow from their rides.</summary>
public static class ReviewMaker
{
    public static ReviewDocument Make(ReviewSpec spec)
    {
        ImmutableArray<RideEntry> rides = [.. spec.Rides.OrderBy(ride => ride.Day).ThenBy(ride => ride.Start).Select(ride => RideMaker.Make(ride, spec.Start))];
        var history = HistoryMaker.Make(spec, rides);
        return new ReviewDocument
        {
            AsOf = spec.Start.PlusDays(7),
            Rider = new RiderEntry
            {
                Label = spec.Label,
                Tier = Formatting.Words.Find<Tier>(spec.Tier),
                Experience = Experience.Regular,
                TimeZone = "Europe/Lisbon",
                PlannedHours = spec.PlannedHours,
                PlannedHoursFromHistory = spec.PlannedFromHistory,
            },
            Week = Week(spec, rides, history),
            History = history,
            Rides = rides,
            Findings = spec.Findings,
            SmallestChange = spec.Change,
            Notices = spec.Notices,
            Summary = Summary(spec, rides),
            Note = spec.Note,
            Thresholds = spec.Thresholds,
            RuleHistory = SampleSeason.Rules(spec),
            Progress = SampleSeason.Progress(spec),
        };
    }

    private static WeekEntry Week(ReviewSpec spec, ImmutableArray<RideEntry> rides, ImmutableArray<HistoryEntry> history)
    {
        var bands = HistoryMaker.Sum(rides);
        var total = bands.Low + bands.Middle + bands.High;
        var stress = Math.Round(rides.Sum(ride => ride.Stress ?? 0), 1);
        var last = history[^1];
        HistoryEntry[] before = [.. history.SkipLast(1).TakeLast(4)];
        var hard = rides.Count(IsHard);
        return new WeekEntry
        {
            StartsOn = spec.Start,
            IsoWeek = IsoWeek.StartingOn(spec.Start),
            Finished = spec.Finished,
            Hours = Math.Round(rides.Sum(ride => ride.DurationSeconds) / 3600.0, 2),
            RideCount = rides.Length,
            Stress = stress,
            StressUnknownHours = Math.Round(rides.Where(ride => ride.Stress is null).Sum(ride => ride.DurationSeconds) / 3600.0, 2),
            WorkKj = rides.Any(ride => ride.WorkKj is not null) ? Math.Round(rides.Sum(ride => ride.WorkKj ?? 0)) : null,
            BandSeconds = bands,
            ZoneSeconds = [.. Enumerable.Range(0, 7).Select(zone => rides.Sum(ride => ride.ZoneSeconds[zone]))],
            SplitByTime = total == 0 ? null : new SplitEntry(Math.Round(bands.Low / total, 4), Math.Round(bands.Middle / total, 4), Math.Round(bands.High / total, 4)),
            SplitBySession = rides.IsEmpty ? null : new SessionSplitEntry(Math.Round(1 - ((double)hard / rides.Length), 4), Math.Round((double)hard / rides.Length, 4)),
            PolarizationIndex = null,
            Structure = total == 0 ? null : WeekStructure.Pyramidal,
            IntendedLowShare = spec.LowShare,
            SplitTolerance = spec.Tolerance,
            LongestRideSeconds = rides.Select(ride => ride.DurationSeconds).DefaultIfEmpty(0).Max(),
            LongRideAskedSeconds = spec.LongRideHours is { } hours ? (long)(hours * 3600) : null,
            OtherActivityHours = spec.OtherHours.Values.Sum(),
            Exception = Formatting.Words.Find<ExceptionKind>(spec.Exception),
            AcuteLoad = last.AcuteLoad,
            ChronicLoad = last.ChronicLoad,
            RampPerWeek = last.RampPerWeek,
            AcuteChronicRatio = last.ChronicLoad > 0 ? Math.Round(last.AcuteLoad / last.ChronicLoad, 2) : null,
            SettlingIn = spec.SettlingIn,
            Monotony = 1.1,
            Strain = Math.Round(stress * 1.1, 1),
            StressMeanBefore = before.Length == 0 ? null : Math.Round(before.Average(week => week.Stress), 1),
            PlanWeek = spec.PlanWeek,
            PlanWeeks = spec.PlanWeeks,
            Days = [.. Enumerable.Range(0, 7).Select(day => Day(spec.Start.PlusDays(day), rides, spec.OtherHours.GetValueOrDefault(day)))],
            Spans = Spans(rides, spec.Start),
        };
    }

    private static DayEntry Day(LocalDate date, ImmutableArray<RideEntry> rides, double otherHours)
    {
        RideEntry[] own = [.. rides.Where(ride => ride.StartsAt.Date == date)];
        return new DayEntry
        {
            Date = date,
            Kind = own.Select(ride => Formatting.Words.Find<DayKind>(Formatting.Words.OrNull<RideKind>(ride.Kind)) ?? DayKind.Recovery).Append(otherHours >= 0.5 ? DayKind.Recovery : DayKind.Rest).Max(),
            Hours = Math.Round(own.Sum(ride => ride.DurationSeconds) / 3600.0, 2),
            Stress = own.Any(ride => ride.Stress is not null) ? Math.Round(own.Sum(ride => ride.Stress ?? 0), 1) : null,
            Rides = [.. own.Select(ride => ride.File)],
            OtherActivityHours = otherHours,
        };
    }

    private static bool IsHard(RideEntry ride) => ride.IsHard;

    private static ImmutableArray<SpanEntry> Spans(ImmutableArray<RideEntry> rides, LocalDate start)
    {
        RideEntry[] hard = [.. rides.Where(IsHard)];
        var spans = ImmutableArray.CreateBuilder<SpanEntry>();
        for (var i = 0; i + 1 < hard.Length; i++)
        {
            var end = hard[i].StartsAt.Plus(Duration.FromSeconds(hard[i].ElapsedSeconds));
            var hours = Math.Round((hard[i + 1].StartsAt - end).TotalHours, 1);
            var adjacent = Period.DaysBetween(hard[i].StartsAt.Date, hard[i + 1].StartsAt.Date) <= 1;
            var verdict = !adjacent ? Verdict.Kept : hard[i].Kind == RideKind.High && hard[i + 1].Kind == RideKind.High ? Verdict.Broken : Verdict.Watch;
            spans.Add(new SpanEntry { From = end, To = hard[i + 1].StartsAt, FromRide = hard[i].File, ToRide = hard[i + 1].File, Hours = hours, Verdict = verdict });
        }

        return spans.ToImmutable();
    }

    private static SummaryEntry Summary(ReviewSpec spec, ImmutableArray<RideEntry> rides)
    {
        int Count(Verdict verdict) => spec.Findings.Count(finding => finding.Verdict == verdict);
        var easy = rides.Count(ride => !IsHard(ride));
        return new SummaryEntry
        {
            Headline = spec.Headline,
            Subline = spec.Subline ?? $"{Count(Verdict.Broken)} of {spec.Findings.Length} rules broken, {Count(Verdict.Watch)} to watch. {spec.Change?.Sentence}".TrimEnd(),
            Broken = Count(Verdict.Broken),
            Watch = Count(Verdict.Watch),
            Kept = Count(Verdict.Kept),
            NotJudged = Count(Verdict.NotJudged),
            ToChange = spec.ToChange,
            Held = spec.Held,
            SplitSentence = rides.IsEmpty ? "" : $"By session {easy} of {rides.Length} rides were easy: one counts minutes, the other what a ride was for. By time the week was pyramidal.",
            Cautions =
            [
                "Figures describe past rides; they diagnose nothing.",
                "Chest pain, fainting, unusual breathlessness, or fatigue that does not lift: stop, and see a doctor.",
                "New to hard training, pregnant, under 18, a heart, lung or metabolic condition: ask a doctor before following intensity targets.",
                "Thresholds are estimates. A coach’s or a clinician’s judgement of the person comes before any rule here.",
            ],
        };
    }
}
