using System.Collections.Immutable;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Rules;

/// <summary>A week as the rules look at it.</summary>
internal sealed class JudgedWeek
{
    private JudgedWeek? _easiest;
    private JudgedWeek? _hardest;

    public JudgedWeek(WeekUnderReview review)
        : this(review.Week, new Background(review))
    {
    }

    public JudgedWeek(WeekFacts week, Background background)
        : this(week, background, background.Past.LastWeek?.Days[6])
    {
    }

    private JudgedWeek(WeekFacts week, Background background, DayFacts? dayBefore)
    {
        Week = week;
        Background = background;
        DayBefore = dayBefore;
    }

    public WeekFacts Week { get; }

    public Background Background { get; }

    public PlanInForce Plan => Background.Plan;

    public Limits Limits => Background.Plan.Limits;

    public WeekExceptions Exceptions => Background.Exceptions;

    /// <summary>The day before the week; null without history.</summary>
    public DayFacts? DayBefore { get; }

    /// <summary>More hours than in the week before; false without one.</summary>
    public bool IsLongerThanTheLast => Background.Past.LastWeek is { } last && Week.Hours > last.Hours;

    /// <summary>Hours asked of this week: fewer on lighter days, none for days out. Null when unknown, or when none are asked.</summary>
    public double? PlannedHours => Background.AskedHours;

    /// <summary>Most of it lies in the first seven days back after illness or a long absence.</summary>
    public bool JustBack => Background.JustBack;

    /// <summary>The week with every ride that nothing could rate read as easy as its length allows.</summary>
    public JudgedWeek Easiest => _easiest ??= Read(hard: false);

    /// <summary>The week with every ride that nothing could rate read as hard.</summary>
    public JudgedWeek Hardest => _hardest ??= Read(hard: true);

    /// <summary>Riding that could have been added before the week's hours or their growth were worth a look, s; 0 or more.</summary>
    public double RoomForMoreSeconds
    {
        get
        {
            if (ReturnToRiding.AsksForLess(this))
                return 0;
            var most = PlannedHours * (1 + Limits.HoursWatchMargin) ?? double.PositiveInfinity;
            if (Background.OrdinaryMean is { Hours: > 0 and var mean })
                most = Math.Min(most, mean * Limits.GrowthRatio);
            return Math.Max(0, 3600 * most - Week.RideSeconds);
        }
    }

    /// <summary>The review says that the week had fewer hours than planned.</summary>
    public bool AsksForMore => WeeklyHours.IsOff(this) && Week.Hours < PlannedHours;

    /// <summary>The review says that the week, or a ride of it, was longer than it should have been, or the rider has just come back.</summary>
    public bool RefusesMore => JustBack || ReturnToRiding.AsksForLess(this) || WeeklyGrowth.IsWatched(this) || LongestRideJump.IsWatched(this)
        || (WeeklyHours.IsOff(this) && Week.Hours > PlannedHours);

    /// <summary>The same week with other days.</summary>
    public JudgedWeek With(ImmutableArray<DayFacts> days) =>
        new(WeekFacts.Build(days, Week.LoadBefore, Week.FirstRideOn, Week.Exception, Week.DaysThatCount), Background, DayBefore);

    /// <summary>A day by its place in the week, 0 first; −1 is the day before.</summary>
    public DayFacts? Day(int index) => index < 0 ? DayBefore : Week.Days[index];

    /// <summary>A day's name at a sentence's start; a day of the week before is said to be so.</summary>
    public string NameOf(LocalDate date) => date < Week.StartsOn ? $"The {Shown.Weekday(date)} before" : Shown.Weekday(date);

    /// <summary>Whether there is an event on a day of the week.</summary>
    public bool IsEventDay(int index) => Background.Calendar.KindOn(Week.StartsOn.PlusDays(index)) == ExceptionKind.Event;

    /// <summary>Days of the week that count in full: neither out nor an event.</summary>
    public int OrdinaryDays
    {
        get
        {
            var count = 0;
            for (var day = 0; day < 7; day++)
                count += IsEventDay(day) || Background.Calendar.IsOut(Week.StartsOn.PlusDays(day)) ? 0 : 1;
            return count;
        }
    }

    /// <summary>The coach’s setting aside of a rule for this week; null when it is applied.</summary>
    public SetAsideRule? SetAside(string rule)
    {
        foreach (var aside in Plan.Rider.SetAside)
        {
            if (aside.Rule == rule && Week.EndsOn <= aside.Until)
                return aside;
        }
        return null;
    }

    /// <summary>Whether a ride that nothing could rate lies in the week, or on the day before it.</summary>
    public bool HasUnrated(bool dayBefore)
    {
        if (dayBefore && DayBefore is { } before && HasUnrated(before))
            return true;
        foreach (var day in Week.Days)
        {
            if (HasUnrated(day))
                return true;
        }
        return false;
    }

    /// <summary>The trust in the thresholds behind the week's rides and those of some days before.</summary>
    public Trust TrustIn(Basis basis, int daysBefore)
    {
        var worst = Background.TrustIn(basis, daysBefore);
        if (basis == Basis.Time)
            return worst;
        foreach (var day in Week.Days)
            worst = Background.Worse(worst, Background.TrustIn(day, basis));
        return worst;
    }

    /// <summary>Whether hours without a known stress are too many, in the week or together with the days before.</summary>
    public bool StressIsPatchy(int daysBefore)
    {
        var limit = Limits.StressUnknownShareAtMost;
        var (unknown, all) = Background.StressCover(daysBefore);
        var ownUnknown = Week.UnknownStressHours * 3600;
        return IsMuch(ownUnknown, Week.RideSeconds) || IsMuch(unknown + ownUnknown, all + Week.RideSeconds);

        bool IsMuch(double part, double whole) => whole > 0 && Close.Above(AsShown.Percent(part / whole), 100 * limit);
    }

    private static bool HasUnrated(DayFacts day)
    {
        foreach (var ride in day.Rides)
        {
            if (ride.Kind == RideKind.Unrated)
                return true;
        }
        return false;
    }

    private JudgedWeek Read(bool hard)
    {
        var before = DayBefore is { } day && HasUnrated(day) ? UnratedReading.Of(day, hard, Limits) : DayBefore;
        var days = Week.Days;
        for (var i = 0; i < days.Length; i++)
        {
            if (HasUnrated(days[i]))
                days = days.SetItem(i, UnratedReading.Of(days[i], hard, Limits));
        }
        return new JudgedWeek(With(days).Week, Background, before);
    }

    /// <summary>What a ride that nothing could rate may have been at most and at least: a verdict that differs between the two is not given.</summary>
    private static class UnratedReading
    {
        public static DayFacts Of(DayFacts day, bool hard, Limits limits) =>
            DayFacts.Build(day.Date, day.Rides.Select(r => r.Kind == RideKind.Unrated ? Of(r, hard, limits) : r), day.OtherSeconds, limits);

        private static RideFigures Of(RideFigures ride, bool hard, Limits limits) => hard
            ? ride with { Kind = RideKind.High, Bands = new BandSeconds(0, 0, ride.DurationSeconds) }
            : ride with
            {
                Kind = EasiestKind(ride.DurationSeconds, limits),
                LongEnough = KindOfRide.MeetsLength(ride.DurationSeconds, limits),
                Bands = new BandSeconds(ride.DurationSeconds, 0, 0),
            };

        private static RideKind EasiestKind(double seconds, Limits limits) =>
            KindOfRide.MeetsLength(seconds, limits) ? RideKind.Long
            : seconds <= limits.RecoveryMinutes * 60 ? RideKind.Recovery
            : RideKind.Endurance;
    }
}
