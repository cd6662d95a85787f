using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>A week to lay out: the plan, what was ridden before, what each day allows, and what is aimed at.</summary>
internal sealed record WeekFrame
{
    public required LocalDate StartsOn { get; init; }

    /// <summary>The rider with the plan table's events among the exceptions, and with the week's own proposal.</summary>
    public required Rider Rider { get; init; }

    public required PlanInForce Plan { get; init; }

    public required PlanCalendar Calendar { get; init; }

    /// <summary>Every week before, ridden or laid out, oldest first.</summary>
    public required ImmutableArray<WeekFacts> Past { get; init; }

    /// <summary>The seven days.</summary>
    public required ImmutableArray<DayFrame> Days { get; init; }

    public required WeekAim Aim { get; init; }

    public required RideStock Stock { get; init; }

    /// <summary>What the week is excepted for, its own proposal included.</summary>
    public WeekExceptions Exceptions { get; init; }

    /// <summary>The layout makes the week lighter, not the rider file.</summary>
    public bool ProposedLighter { get; init; }

    /// <summary>Why the week is not lighter although one is due; null where none is, and where it is lighter.</summary>
    public string? LighterWaits { get; init; }

    /// <summary>A test is due.</summary>
    public bool TestDue { get; init; }

    /// <summary>That a test is due and finds no day was said of a week before.</summary>
    public bool TestWaited { get; init; }

    /// <summary>The week, or most of it, follows an illness of some days.</summary>
    public bool BackFromIllness => Calendar.AbsenceBefore(StartsOn.PlusDays(3), 7) is { Ill: true } absence && absence.Days >= Limits.ReturnDaysOut;

    /// <summary>It follows an absence, or as many days without a ride, as the rule on coming back calls long.</summary>
    public bool BackFromLongAbsence =>
        (Calendar.AbsenceBefore(StartsOn, 7) is { } absence && absence.Days >= Limits.ReturnLongDaysOut) || DaysSinceRiding >= Limits.ReturnLongDaysOut;

    public bool IsLighter => Exceptions.Lighter;

    /// <summary>The long ride asked for is more than the longest of late may grow to.</summary>
    public bool LongRideGrows => Aim.MostMinutes < Math.Floor(60 * Limits.LongRideHours);

    /// <summary>Days that may hold riding at all.</summary>
    public int OpenDays => Days.Count(d => d.Ridden is null && (d.Free >= DayFrame.LeastRide || !d.Standing.IsEmpty));

    public Limits Limits => Plan.Limits;

    public LocalDate? FirstRideOn => Past.IsEmpty ? null : Past[^1].FirstRideOn;

    public LoadState LoadBefore => Past.IsEmpty ? default : Past[^1].LoadAfter;

    private int DaysSinceRiding => Past.SelectMany(w => w.Days).Reverse().TakeWhile(d => d.Rides.IsEmpty).Count();
}
