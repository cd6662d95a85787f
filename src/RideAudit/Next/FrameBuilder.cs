using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Rules;
using RideAudit.Sessions;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Gathers what is known of a week before it is laid out.</summary>
/// <param name="rider">The rider file.</param>
/// <param name="table">The plan tables.</param>
/// <param name="anewFrom">The first day of weeks laid out anew, whatever the program planned for them before; null: of none.</param>
internal sealed class FrameBuilder(Rider rider, PlanTable table, LocalDate? anewFrom = null)
{
    private const double EventWeekShare = 0.6;
    // What was missed is not made up for: the days left take a little more than their part.
    private const double MostMadeUp = 1.4;
    private const double ReturnShare = 0.7;
    private const double LighterAlready = 0.95;
    private const double AfterIllnessShare = 0.85;
    private const int DaysBeforeTest = 14;
    private readonly Dictionary<Limits, RideStock> _stocks = [];
    private readonly PlanCalendar _calendar = new(rider, table);

    /// <summary>The frame of a week; null when no hours are planned and none are to be derived.</summary>
    /// <param name="startsOn">The week's first day.</param>
    /// <param name="past">Every week before, oldest first; may be empty.</param>
    /// <param name="ridden">Days of the week that are over, in order; empty for a week to come.</param>
    /// <param name="proposed">Days of earlier weeks that the layouts made lighter.</param>
    public WeekFrame? Build(LocalDate startsOn, ImmutableArray<WeekFacts> past, ImmutableArray<DayFacts> ridden, bool testDue, ImmutableArray<PlanException> proposed)
    {
        var known = With(proposed);
        var plan = PlanOf(known, past, startsOn);
        var now = new PlanCalendar(known, PlanTable.Empty);
        var ordinary = WeekAim.Ordinary(past, now, plan.Limits);
        if (WeekAim.HoursOf(plan, ordinary) is not var (hours, isStep))
            return null;
        var exceptions = now.Week(startsOn);
        var eventNext = EventNext(startsOn);
        var due = exceptions.None && ridden.IsEmpty && !eventNext ? LighterVerdict(plan, past, startsOn, hours) : Verdict.Kept;
        var isDue = due is Verdict.Watch or Verdict.Broken;
        var waits = !isDue ? null
            // Two lighter weeks and the event in a row are too little riding for anybody.
            : due == Verdict.Watch && EventNext(startsOn.PlusDays(7)) ? "the next week is the lighter one, before the event"
            : isStep && plan.Limits.LighterWeekFactor * plan.PlannedHours >= LighterAlready * ordinary.Average(w => w.Hours) ? "the weeks ridden of late were no longer than a lighter week of the hours planned"
            : null;
        var lighter = exceptions.None && ridden.IsEmpty && (eventNext || (isDue && waits is null));
        if (lighter)
        {
            known = With(proposed.Add(new PlanException(startsOn, startsOn.PlusDays(6), ExceptionKind.Lighter)));
            plan = PlanOf(known, past, startsOn);
            now = new PlanCalendar(known, PlanTable.Empty);
            exceptions = now.Week(startsOn);
        }
        var stock = StockOf(plan.Limits, startsOn);
        var frame = new WeekFrame
        {
            StartsOn = startsOn,
            Rider = known,
            Plan = plan,
            Calendar = now,
            Past = past,
            Days = [],
            Aim = new WeekAim(0, 0, 0, 0, 0, WeekAim.MostMinutesOf(past, plan.Limits, hours), isStep),
            Stock = stock,
            Exceptions = exceptions,
            ProposedLighter = lighter,
            LighterWaits = waits,
            TestDue = testDue && exceptions is { Event: false, Away: false, Ill: false } && (now.AbsenceBefore(startsOn, DaysBeforeTest)?.Days ?? 0) < plan.Limits.ReturnDaysOut,
        };
        frame = frame with { Days = new DayFrames(frame, table, ridden, RoomPerRide(hours, plan, ordinary)).All };
        return frame with { Aim = AimOf(frame, hours, ordinary) };
    }

    private Rider With(ImmutableArray<PlanException> proposed) => rider with
    {
        Exceptions = [.. (rider.Exceptions.IsDefault ? [] : rider.Exceptions).Concat(table.Exceptions(anewFrom)).Concat(proposed).OrderBy(e => e.From)],
    };

    private RideStock StockOf(Limits limits, LocalDate date)
    {
        if (!_stocks.TryGetValue(limits, out var stock))
            _stocks[limits] = stock = new RideStock(rider, limits, date);
        return stock;
    }

    private static PlanInForce PlanOf(Rider rider, ImmutableArray<WeekFacts> past, LocalDate startsOn) => PlanInForce.For(
        rider,
        [.. past.Select((w, i) => new WeekHours(w.StartsOn, w.Hours, !WeekExceptions.For(rider.Exceptions, w.StartsOn).With(w.Exception).None, i == 0 ? w.FirstRideOn : null))],
        startsOn);

    // The rule looks at nothing but hours: a week of the hours aimed at, in one ride, is asked about.
    private Verdict LighterVerdict(PlanInForce plan, ImmutableArray<WeekFacts> past, LocalDate startsOn, double hours)
    {
        if (past.IsEmpty)
            return Verdict.Kept;
        if (StockOf(plan.Limits, startsOn).Easy(SessionPurpose.Endurance, Math.Max(60, (int)(hours * 60))) is not { } ride)
            return Verdict.Kept;
        ImmutableArray<DayFacts> days = [.. Enumerable.Range(0, 7).Select(i => DayFacts.Build(startsOn.PlusDays(i), i == 0 ? [ride.On(startsOn)] : [], 0, plan.Limits))];
        var week = WeekFacts.Build(days, past[^1].LoadAfter, past[^1].FirstRideOn);
        return LighterWeek.Of(new JudgedWeek(new WeekUnderReview(week, new Past(past), plan)));
    }

    /// <summary>An event in the week after, and none in this one.</summary>
    private bool EventNext(LocalDate startsOn) => _calendar.EventDays(startsOn).IsEmpty && !_calendar.EventDays(startsOn.PlusDays(7)).IsEmpty;

    private static int RoomPerRide(double hours, PlanInForce plan, ImmutableArray<WeekFacts> ordinary)
    {
        var rides = WeekAim.RidesOf(plan.Tier ?? Tier.Middle, plan.Rider.Experience, ordinary, 7);
        return (int)(hours * 60 / Math.Max(1, rides));
    }

    private WeekAim AimOf(WeekFrame frame, double hours, ImmutableArray<WeekFacts> ordinary)
    {
        var (plan, exceptions) = (frame.Plan, frame.Exceptions);
        var limits = plan.Limits;
        var share = exceptions.Event
            ? EventWeekShare * frame.Days.Count(d => d.Exception != ExceptionKind.Event) / 7
            : frame.Calendar.ShareAsked(frame.StartsOn, limits.LighterWeekFactor);
        var returns = frame.BackFromLongAbsence;
        if (returns && ordinary.Length > 0)
            hours = Math.Min(hours, ReturnShare * ordinary.Where(w => w.Hours > 0).Average(w => w.Hours));
        else if (frame.BackFromIllness)
            hours *= AfterIllnessShare;
        // The event comes on top of the short rides around it.
        var minutes = (int)Math.Round(hours * share * 60) + frame.Days.Where(d => d is { Exception: ExceptionKind.Event, Ridden: null }).Sum(d => d.Standing.Sum(r => r.Minutes));
        var ridden = (int)(frame.Days.Sum(d => d.Ridden?.RideSeconds ?? 0) / 60);
        var left = frame.Days.Count(d => d.Ridden is null);
        if (left < 7)
            minutes = Math.Clamp(minutes, ridden, ridden + (int)(MostMadeUp * minutes * left / 7));
        var tier = LimitCatalogue.Override(new Limits(), rider.Plan.LimitOverrides).TierOf(hours);
        var (high, threshold) = WeekAim.HardDaysOf(tier, rider.Experience, limits);
        if (frame.BackFromIllness && !returns)
            (high, threshold) = (0, 1);
        else if (exceptions.Event || exceptions.Away || returns || 2 * frame.OpenDays < 7 && frame.Days.Any(d => d.Exception is not null and not ExceptionKind.Lighter))
            (high, threshold) = returns ? (0, 0) : (Math.Min(1, high), 0);
        else if (exceptions.Lighter && high + threshold > 1)
            (high, threshold) = threshold > 0 ? (high, threshold - 1) : (high - 1, 0);
        var most = frame.Aim.MostMinutes;
        var wantsLong = !exceptions.Lighter && !exceptions.Away && !exceptions.Event;
        var asked = (int)Math.Ceiling(limits.LongRideHours * 60 / 5 - Close.Hair) * 5;
        return frame.Aim with
        {
            Minutes = minutes,
            Rides = WeekAim.RidesOf(tier, rider.Experience, ordinary, frame.OpenDays + frame.Days.Count(d => d.Ridden is { Rides.IsEmpty: false })),
            HighDays = high,
            ThresholdDays = threshold,
            LongMinutes = wantsLong ? Math.Min(asked, Math.Min(most, Math.Max(60, minutes / 10 * 5 + 5))) : 0,
        };
    }
}
