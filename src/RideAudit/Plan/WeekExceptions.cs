using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Plan;

/// <summary>What a week is excepted for. A week may be both lighter and hold an event.</summary>
/// <remarks>
/// Choices, common practice: a week holds an event from one event day on, because the event shapes the whole week;
/// it is an ill week from one ill day on; an away week from three days out on; lighter when at least four of its seven days are,
/// so that a long weekend does not excuse a week. Hours shrink by the day: see <see cref="PlanCalendar"/>.
/// </remarks>
/// <param name="Lighter">A lighter week.</param>
/// <param name="Event">A week that holds an event.</param>
/// <param name="Away">A week whose hours, endurance and long ride are not asked for: away for three days or more, or ill.</param>
/// <param name="Ill">A week with an ill day: nothing in it asks for more riding.</param>
internal readonly record struct WeekExceptions(bool Lighter, bool Event, bool Away, bool Ill = false)
{
    private const int DaysThatMakeTheWeekLighter = 4;
    private const int DaysThatMakeTheWeekAway = 3;

    /// <summary>An ordinary week.</summary>
    public bool None => !(Lighter || Event || Away || Ill);

    /// <summary>The one to show when there are several: ill before event before away before lighter; null for an ordinary week.</summary>
    public ExceptionKind? Leading =>
        Ill ? ExceptionKind.Ill : Event ? ExceptionKind.Event : Away ? ExceptionKind.Away : Lighter ? ExceptionKind.Lighter : null;

    /// <summary>The exceptions of the week that starts on a day.</summary>
    /// <param name="exceptions">The rider file's.</param>
    /// <param name="startsOn">The week's first day.</param>
    public static WeekExceptions For(ImmutableArray<PlanException> exceptions, LocalDate startsOn)
    {
        if (exceptions.IsDefaultOrEmpty)
            return default;
        int lighter = 0, events = 0, away = 0, ill = 0;
        for (var day = 0; day < 7; day++)
        {
            var date = startsOn.PlusDays(day);
            lighter += Covers(exceptions, date, ExceptionKind.Lighter);
            events += Covers(exceptions, date, ExceptionKind.Event);
            away += Covers(exceptions, date, ExceptionKind.Away);
            ill += Covers(exceptions, date, ExceptionKind.Ill);
        }
        return new WeekExceptions(lighter >= DaysThatMakeTheWeekLighter, events > 0, ill > 0 || away >= DaysThatMakeTheWeekAway, ill > 0);
    }

    /// <summary>These and what another source says of the week.</summary>
    /// <param name="kind">One kind; null adds nothing.</param>
    public WeekExceptions With(ExceptionKind? kind) => kind switch
    {
        ExceptionKind.Lighter => this with { Lighter = true },
        ExceptionKind.Event => this with { Event = true },
        ExceptionKind.Away => this with { Away = true },
        ExceptionKind.Ill => this with { Away = true, Ill = true },
        _ => this,
    };

    private static int Covers(ImmutableArray<PlanException> exceptions, LocalDate date, ExceptionKind kind)
    {
        foreach (var exception in exceptions)
        {
            if (exception.Kind == kind && exception.From <= date && date <= exception.To)
                return 1;
        }
        return 0;
    }
}
