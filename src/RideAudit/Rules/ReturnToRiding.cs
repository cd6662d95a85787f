using System.Collections.Immutable;
using NodaTime;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>Coming back easy after illness or a long absence.</summary>
internal sealed class ReturnToRiding : Rule<ReturnToRiding.Reading>
{
    private const int DaysBack = 7;

    private static readonly ReturnToRiding Own = new();

    public override string Id => "return-to-riding";

    public override string Name => "Return to riding";

    public override Standing Standing { get; } = new() { Rank = 10, Protects = true };

    public override bool IsChangeSought => true;

    public override Evidence Evidence => Evidence.CommonPractice;

    public override string Source => NoSource;

    public override ImmutableArray<string> LimitNames =>
        ["return_days_out", "return_long_days_out", "return_ill_days", "return_away_days", "return_hours_share"];

    protected override Needs Needs => Needs.Rides | Needs.FinishedWeek;

    protected override Basis Basis => Basis.Kinds;

    protected override bool UnratedMatters => true;

    public override string Ask(PlanInForce plan)
    {
        var limits = plan.Limits;
        return $"After {Shown.Count(limits.ReturnDaysOut, "day")} or more out: no high day in the first {Shown.Count(limits.ReturnIllDays, "day")} after illness, "
            + $"nor in the first {Shown.Count(limits.ReturnAwayDays, "day")} after {Shown.Count(limits.ReturnLongDaysOut, "day")} or more away; "
            + $"after an absence that long no more than {Shown.Share(limits.ReturnHoursShare)} of the usual hours in the first {Shown.Count(DaysBack, "day")}.";
    }

    /// <summary>Whether it says that the first days back held too many hours.</summary>
    public static bool AsksForLess(JudgedWeek week) => week.Background.Returns.Any(a => IsTooMuch(ReadOne(a, week), week.Limits)) && Own.Decide(week).IsWanting;

    protected override Look Read(JudgedWeek week)
    {
        Look? worst = null;
        foreach (var absence in week.Background.Returns)
        {
            var reading = ReadOne(absence, week);
            var verdict = VerdictOf(reading, week.Limits);
            if (worst is not { } known || verdict > known.Verdict)
                worst = As(verdict, reading);
        }
        return worst ?? NotJudged($"there were no {Shown.Count(week.Limits.ReturnDaysOut, "day")} out in a row to come back from");
    }

    protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict)
    {
        var days = Out(reading.Absence);
        if (verdict == Verdict.Kept)
            return new RuleWords { Sentence = $"Back after {days}, and easy at first.", Held = $"an easy return after {days}" };
        var tooSoon = reading.HighDays.IsEmpty ? null : reading.HighDays[0];
        return new RuleWords
        {
            Sentence = tooSoon is { } day
                ? $"{Shown.Weekday(day.Date)} was a high day, the {Ordinal(Back(reading.Absence, day))} day after {days}."
                : $"{Shown.Hours(reading.Hours)} in the first {Shown.Count(DaysBack, "day")} after {days}, {Shown.Share(reading.Hours / reading.Usual)} of the usual {Shown.Hours(reading.Usual)}.",
            WouldHaveKept = Easier(reading, week.Limits),
            Advice = reading.Absence.Ill ? "Ride easy until the illness is well behind." : "Come back in steps: easy rides first, and fewer hours than usual.",
            Headline = tooSoon is not null ? $"a hard ride too soon after {days}" : $"many hours right after {days}",
            Occurrences = [Describe(reading, verdict)],
        };
    }

    private static string Easier(Reading reading, Limits limits)
    {
        var easy = reading.HighDays.IsEmpty ? null : $"Nothing but easy riding in the first {Shown.Count(EasyDays(reading.Absence, limits), "day")} back";
        if (!IsTooMuch(reading, limits))
            return $"{easy}.";
        var hours = Shown.Length(60 * Math.Floor(60 * limits.ReturnHoursShare * reading.Usual!.Value + Close.Hair));
        var days = Shown.Count(DaysBack, "day");
        return easy is null ? $"At most {hours} in those {days}." : $"{easy}, and at most {hours} in the first {days}.";
    }

    private static Reading ReadOne(Absence absence, JudgedWeek week)
    {
        var high = ImmutableArray<DayFacts>.Empty;
        double seconds = 0;
        for (var back = 1; back <= DaysBack; back++)
        {
            if (DayOn(absence.To.PlusDays(back), week) is not { } day)
                continue;
            seconds += day.RideSeconds;
            if (day.Kind == DayKind.High && back <= EasyDays(absence, week.Limits) && day.Date >= week.Week.StartsOn)
                high = high.Add(day);
        }
        var isLong = absence.Days >= week.Limits.ReturnLongDaysOut;
        return new Reading(absence, high, seconds / 3600, isLong ? week.Background.UsualHoursBefore(absence.From) ?? week.Plan.PlannedHours : null);
    }

    private static Verdict VerdictOf(Reading reading, Limits limits)
    {
        if (!reading.HighDays.IsEmpty)
            return reading.Absence.Ill ? Verdict.Broken : Verdict.Watch;
        return IsTooMuch(reading, limits) ? Verdict.Watch : Verdict.Kept;
    }

    private static bool IsTooMuch(Reading reading, Limits limits) =>
        reading.Usual is > 0 and var usual && Close.Above(AsShown.Percent(reading.Hours / usual), 100 * limits.ReturnHoursShare);

    private static int EasyDays(Absence absence, Limits limits) =>
        absence.Ill ? limits.ReturnIllDays : absence.Days >= limits.ReturnLongDaysOut ? limits.ReturnAwayDays : 0;

    private static int Back(Absence absence, DayFacts day) => Period.DaysBetween(absence.To, day.Date);

    private static DayFacts? DayOn(LocalDate date, JudgedWeek week)
    {
        var index = Period.DaysBetween(week.Week.StartsOn, date);
        return index > 6 ? null : index >= 0 ? week.Week.Days[index] : week.Background.Past.LastWeek?.Days[7 + index];
    }

    private static Occurrence Describe(Reading reading, Verdict verdict) => new()
    {
        Verdict = verdict,
        Dates = [.. reading.HighDays.Select(d => d.Date)],
        Rides = [.. reading.HighDays.SelectMany(d => d.Rides).Where(r => r.IsHard).Select(r => r.File)],
        Numbers =
        [
            NamedNumber.Of("days_out", reading.Absence.Days, 0, v => $"{Shown.Tally((int)v, "day")} out"),
            NamedNumber.Of("hours_since", reading.Hours, 2, v => $"{Shown.Hours(v)} since"),
            NamedNumber.Of("usual_hours", reading.Usual, 2, v => $"{Shown.Hours(v)} usual"),
        ],
    };

    private static string Out(Absence absence) => $"{Shown.Count(absence.Days, absence.Ill ? "ill day" : "day")}{(absence.Ill ? "" : " away")}";

    private static string Ordinal(int day) => day switch { 1 => "first", 2 => "second", 3 => "third", _ => $"{Shown.Number(day)}th" };

    /// <summary>What it reads.</summary>
    /// <param name="Absence">The days out.</param>
    /// <param name="HighDays">High days of the week that came too soon after it, in order.</param>
    /// <param name="Hours">Ridden in the first seven days back, as far as the week goes, h.</param>
    /// <param name="Usual">Usual hours of seven days, h; null where the absence was short or nothing says.</param>
    internal readonly record struct Reading(Absence Absence, ImmutableArray<DayFacts> HighDays, double Hours, double? Usual);
}
