using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Tries every sensible layout of a week and keeps the one the rules like best.</summary>
/// <param name="startsOn">The week's first day.</param>
/// <param name="plan">The plan to lay out by: that of the hours aimed at.</param>
/// <param name="past">The weeks up to the reviewed one, oldest first, at least one.</param>
/// <param name="exception">What the week is excepted for, or is to be.</param>
internal sealed class NextWeekLayout(LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, ExceptionKind? exception)
{
    private const int LeastEasyMinutes = 30;
    private const int MostEasyMinutes = 180;
    private const int MostHardMinutes = 105;
    private const int BriefMinutes = 40;
    private const double HoursWeight = 20;
    private const double FullShare = 0.95;
    private readonly NextWeekTaste _taste = new(startsOn, past);
    private readonly Background _background = new(Judged(startsOn, plan, past, exception, [.. Enumerable.Repeat(PlannedDay.Rest, 7)]));

    /// <summary>Minutes aimed at.</summary>
    public double AimedMinutes { get; } = (plan.PlannedHours ?? 0) * 60 * (exception == ExceptionKind.Lighter ? plan.Limits.LighterWeekFactor : 1);

    /// <summary>The best layout.</summary>
    /// <returns>Null when no day of the week can be ridden on, or no hours are planned.</returns>
    public NextWeekFound? Find()
    {
        var free = FreeDays();
        if (free.Count == 0 || plan.PlannedHours is not > 0)
            return null;
        var best = new NextWeekBest();
        var byHardDays = new NextWeekBest[MostHardDays() + 1];
        var full = new NextWeekBest();
        for (var hardDays = MostHardDays(); hardDays >= 0; hardDays--)
        {
            byHardDays[hardDays] = new NextWeekBest();
            foreach (var candidate in Candidates(free, hardDays))
            {
                var score = ScoreOf(candidate, hardDays);
                best.Offer(score, candidate);
                byHardDays[hardDays].Offer(score, candidate);
                if (candidate.Sum(d => d.Minutes) >= FullShare * AimedMinutes)
                    full.Offer(score, candidate);
            }
        }
        if (best.Days is not { } days)
            return null;
        var hard = days.Count(d => d.IsHard);
        var oneMore = hard < MostHardDays() ? byHardDays[hard + 1].Days : null;
        return new NextWeekFound(days, MostHardDays(), oneMore, full.Days, AimedMinutes);
    }

    /// <summary>A layout as the rules look at it.</summary>
    public static WeekUnderReview Judged(
        LocalDate startsOn, PlanInForce plan, ImmutableArray<WeekFacts> past, ExceptionKind? exception, ImmutableArray<PlannedDay> days)
    {
        var last = past[^1];
        var facts = days.Select((d, i) => PlannedRides.DayOf(startsOn.PlusDays(i), d, plan.Limits)).ToImmutableArray();
        return new WeekUnderReview(WeekFacts.Build(facts, last.LoadAfter, last.FirstRideOn, exception), new Past(past), plan);
    }

    private List<int> FreeDays()
    {
        var days = plan.Rider.Plan.Days;
        return [.. Enumerable.Range(0, 7).Where(i => days.IsDefaultOrEmpty || days.Contains(startsOn.PlusDays(i).DayOfWeek))];
    }

    private int MostHardDays() => exception == ExceptionKind.Lighter ? Math.Min(1, plan.Limits.HighDaysAtMost) : plan.Limits.HighDaysAtMost;

    // One hard day is high, a second is around threshold, a third is high again; a rider new to hard riding stays around threshold.
    private bool IsHigh(int number) => plan.Rider.Experience != Experience.New && exception != ExceptionKind.Lighter && number % 2 == 0;

    private IEnumerable<ImmutableArray<PlannedDay>> Candidates(List<int> free, int hardDays)
    {
        var highDays = Enumerable.Range(0, hardDays).Count(IsHigh);
        var lighter = exception == ExceptionKind.Lighter;
        var usual = NextWeekSizes.For(plan, past, highDays, hardDays - highDays, lighter, gentle: false);
        var gentle = NextWeekSizes.For(plan, past, highDays, hardDays - highDays, lighter, gentle: true);
        foreach (var sizes in new[] { usual, gentle }.Distinct().Take(hardDays > 0 ? 2 : 1))
            foreach (var candidate in Candidates(sizes, free, hardDays))
                yield return candidate;
    }

    private IEnumerable<ImmutableArray<PlannedDay>> Candidates(NextWeekSizes sizes, List<int> free, int hardDays)
    {
        foreach (var hard in Subsets(free, hardDays))
            foreach (var longDay in sizes.LongMinutes > 0 && hard.Count < free.Count ? free.Except(hard).Select(d => (int?)d) : [null])
                foreach (var easy in AllSubsets([.. free.Except(hard).Where(d => d != longDay)]))
                    foreach (var shortAfterLoad in new[] { true, false })
                        if (Fill(sizes, hard, longDay, easy, shortAfterLoad) is { } days)
                            yield return days;
    }

    private ImmutableArray<PlannedDay>? Fill(NextWeekSizes sizes, List<int> hard, int? longDay, List<int> easy, bool shortAfterLoad)
    {
        var days = Enumerable.Repeat(PlannedDay.Rest, 7).ToArray();
        for (var i = 0; i < hard.Count; i++)
            days[hard[i]] = IsHigh(i) ? sizes.High : sizes.Threshold;
        if (longDay is { } day)
            days[day] = new PlannedDay(DayKind.Long, sizes.LongMinutes);
        var brief = shortAfterLoad ? easy.Where(e => AfterLoad(days, e)).ToList() : [];
        if (shortAfterLoad && brief.Count == 0)
            return null;
        foreach (var b in brief)
            days[b] = new PlannedDay(DayKind.Recovery, BriefMinutes);
        return Share(sizes, days, [.. easy.Except(brief)]);
    }

    // What is left of the week's minutes, in equal easy rides; what those cannot take, as easy riding within the others.
    private static ImmutableArray<PlannedDay>? Share(NextWeekSizes sizes, PlannedDay[] days, List<int> easy)
    {
        if (easy.Count > 0)
        {
            var each = (sizes.WeekMinutes - days.Sum(d => d.Minutes)) / easy.Count / 5 * 5;
            if (each < LeastEasyMinutes)
                return null;
            var atMost = Math.Min(sizes.MostMinutes, MostEasyMinutes);
            if (sizes.LongMinutes > 0)
                atMost = Math.Min(atMost, Math.Max(LeastEasyMinutes, sizes.LongMinutes - 15));
            foreach (var e in easy)
                days[e] = new PlannedDay(DayKind.Endurance, Math.Min(each, atMost));
        }
        // A recovery ride could be a longer easy one: that comes before longer hard rides.
        if (days.Any(d => d.Kind == DayKind.Recovery))
            return [.. days];
        Lengthen(sizes, days, d => d.IsHard, Math.Min(sizes.MostMinutes, MostHardMinutes));
        Lengthen(sizes, days, d => d.Kind == DayKind.Long, sizes.MostMinutes);
        return [.. days];
    }

    private static void Lengthen(NextWeekSizes sizes, PlannedDay[] days, Func<PlannedDay, bool> which, int atMost)
    {
        var chosen = Enumerable.Range(0, 7).Where(i => which(days[i])).ToList();
        if (chosen.Count == 0)
            return;
        var more = Math.Max(0, (sizes.WeekMinutes - days.Sum(d => d.Minutes)) / chosen.Count / 5 * 5);
        foreach (var i in chosen)
            days[i] = days[i] with { Minutes = Math.Max(days[i].Minutes, Math.Min(days[i].Minutes + more, atMost)) };
    }

    private bool AfterLoad(PlannedDay[] days, int index) => index == 0
        ? past[^1].Days[6] is { } last && (last.IsHard || last.Kind == DayKind.Long)
        : days[index - 1].IsHard || days[index - 1].Kind == DayKind.Long;

    private NextWeekScore ScoreOf(ImmutableArray<PlannedDay> days, int hardDays)
    {
        var judged = new JudgedWeek(Judged(startsOn, plan, past, exception, days).Week, _background);
        var broken = 0;
        var watch = 0;
        foreach (var rule in RuleBook.Standard.Rules)
        {
            var verdict = rule.Decide(judged).Verdict;
            broken += verdict == Verdict.Broken ? 1 : 0;
            watch += verdict == Verdict.Watch ? 1 : 0;
        }
        return new NextWeekScore(broken, watch, -hardDays, _taste.Of(days) + HoursOff(days));
    }

    private double HoursOff(ImmutableArray<PlannedDay> days) => HoursWeight * Math.Abs(days.Sum(d => d.Minutes) - AimedMinutes) / AimedMinutes;

    private static IEnumerable<List<int>> AllSubsets(List<int> items)
    {
        for (var mask = 0; mask < 1 << items.Count; mask++)
            yield return [.. items.Where((_, i) => (mask & (1 << i)) != 0)];
    }

    private static IEnumerable<List<int>> Subsets(List<int> items, int size) => AllSubsets(items).Where(s => s.Count == size);
}
