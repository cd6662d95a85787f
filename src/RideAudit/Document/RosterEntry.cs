using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Document;

/// <summary>One rider of a roster.</summary>
public sealed record RosterEntry
{
    /// <summary>The rider's folder, its name under the roster's.</summary>
    public required string Folder { get; init; }

    /// <summary>The rider's label; the folder's name where there is no review.</summary>
    public required string Label { get; init; }

    /// <summary>What the rider needs.</summary>
    public required RosterNeed Need { get; init; }

    /// <summary>Why the rider stands here, one line.</summary>
    public required string Why { get; init; }

    /// <summary>First day of the reviewed week; null without a review.</summary>
    public LocalDate? WeekStartsOn { get; init; }

    /// <summary>Rules broken, by id, in the order of the method.</summary>
    public ImmutableArray<string> Broken { get; init; } = [];

    /// <summary>Rules to watch, by id, in the order of the method.</summary>
    public ImmutableArray<string> Watch { get; init; } = [];

    /// <summary>Rules not judged; null without a review.</summary>
    public int? NotJudged { get; init; }

    /// <summary>Hours ridden; null without a review.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double? Hours { get; init; }

    /// <summary>Planned hours; null when unknown.</summary>
    [JsonConverter(typeof(Rounded.To2))]
    public double? PlannedHours { get; init; }

    /// <summary>Training stress, points; null without a review.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? Stress { get; init; }

    /// <summary>Low share by time, 0 to 1; null without banded time.</summary>
    [JsonConverter(typeof(Rounded.To4))]
    public double? LowShare { get; init; }

    /// <summary>The week's change in chronic load; null without a review.</summary>
    [JsonConverter(typeof(Rounded.To1))]
    public double? RampPerWeek { get; init; }

    /// <summary>Files that could not be used; null without a review.</summary>
    public int? FilesNotUsed { get; init; }

    /// <summary>The review's file beside the overview; null without one.</summary>
    public string? ReviewFile { get; init; }

    /// <summary>What the week is excepted for; null for an ordinary week and without a review.</summary>
    public ExceptionKind? Exception { get; init; }

    /// <summary>Planned sessions of the week, days of rest not counted; null without a plan table.</summary>
    public int? PlannedSessions { get; init; }

    /// <summary>Those of them that were ridden, on their day or another; null without a plan table.</summary>
    public int? PlannedSessionsDone { get; init; }

    /// <summary>The coach's note on the week; null without one.</summary>
    public string? Note { get; init; }

    /// <summary>The next event from the as-of date on; null when none is known.</summary>
    public Event? NextEvent { get; init; }

    /// <summary>What is known besides, a line each: the rules by name, the figures, what is planned, the note.</summary>
    public ImmutableArray<string> Facts { get; init; } = [];

    /// <summary>What every rule says, in the order of the method; empty without a review.</summary>
    public ImmutableArray<RuleVerdict> Verdicts { get; init; } = [];

    /// <summary>The last four weeks, oldest first, the reviewed one last; fewer where the rides began later.</summary>
    public ImmutableArray<SmallWeek> Weeks { get; init; } = [];

    /// <summary>What one rule says of the rider's week.</summary>
    /// <param name="Rule">The rule, by id.</param>
    /// <param name="Name">Its name.</param>
    /// <param name="Verdict">The verdict.</param>
    public sealed record RuleVerdict(string Rule, string Name, Verdict Verdict);

    /// <summary>An event to come.</summary>
    /// <param name="From">Its first day.</param>
    /// <param name="To">Its last day.</param>
    /// <param name="Name">What the plan table calls it; null without a name.</param>
    public sealed record Event(LocalDate From, LocalDate To, string? Name);
}
