using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
using RideAudit.Next;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Tests.Next;

/// <summary>Riders and histories for layouts.</summary>
internal static class RiddenWeeks
{
    public static readonly LocalDate Monday = new(2026, 6, 22);

    /// <summary>A rider with a threshold power of 250 W.</summary>
    public static Rider RiderOf(double? hours, Experience experience, params (IsoDayOfWeek Day, int Minutes)[] free) => new()
    {
        Experience = experience,
        Plan = new TrainingPlan { WeeklyHours = hours },
        Thresholds = [new ThresholdEntry(new LocalDate(2026, 6, 1), new Watts(250), 168)],
        MinutesFree = free.Length == 0 ? null : free.ToImmutableSortedDictionary(f => f.Day, f => f.Minutes),
    };

    /// <summary>The layouts of so many weeks for a rider without any ride.</summary>
    public static NextDocument LayOut(Rider rider, int weeks = 1, PlanTable? table = null) => LayOut(rider, [], weeks, table);

    /// <summary>The layouts of so many weeks after a history that ends on the day before <see cref="Monday"/>.</summary>
    public static NextDocument LayOut(Rider rider, ImmutableArray<WeekFacts> past, int weeks = 1, PlanTable? table = null) =>
        NextBuilder.LayOut(new NextStart { AsOf = Monday, StartsOn = Monday, Past = past }, rider, table ?? PlanTable.Empty, weeks);

    /// <summary>A document of one week.</summary>
    public static NextDocument Document(NextWeekEntry week) => LayOut(RiderOf(5, Experience.Regular)) with { Weeks = [week] };

    /// <summary>A week in a line: <c>- H60 E45 T60 - L150 E90</c>.</summary>
    public static string Line(NextWeekEntry week) => string.Join(' ', week.Days.Select(d => d switch
    {
        { Exception: ExceptionKind.Event } => "event",
        { Sessions.IsEmpty: true, Exception: { } exception } when exception != ExceptionKind.Lighter => exception.ToString().ToLowerInvariant(),
        { Sessions.IsEmpty: true, RiddenMinutes: > 0 } => $"({Letter(d.Kind)}{d.RiddenMinutes})",
        { Sessions.IsEmpty: true } => "-",
        _ => string.Join('+', d.Sessions.Select(s => $"{s.Kind.ToString()[..1]}{s.Minutes}")),
    }));

    private static string Letter(DayKind kind) => kind.ToString()[..1];
}
