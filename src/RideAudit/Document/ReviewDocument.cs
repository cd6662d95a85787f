using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Rules;
using RideAudit.Rules.Changes;

namespace RideAudit.Document;

/// <summary>One reviewed week, complete: the PDF, the picture, the terminal summary, the plain text and the JSON are all drawn from it.</summary>
/// <remarks>Figures are unrounded: each output rounds one once, as its sentence did, so that no two outputs can disagree.</remarks>
public sealed record ReviewDocument
{
    /// <summary>Name and version of the document's shape.</summary>
    public string Schema { get; init; } = "rideaudit-review/1";

    /// <summary>The date the review looks from.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The rider.</summary>
    public required RiderEntry Rider { get; init; }

    /// <summary>The reviewed week.</summary>
    public required WeekEntry Week { get; init; }

    /// <summary>Up to 26 weeks before the reviewed one, oldest first, the reviewed one last.</summary>
    public required ImmutableArray<HistoryEntry> History { get; init; }

    /// <summary>The reviewed week's rides in order of start.</summary>
    public required ImmutableArray<RideEntry> Rides { get; init; }

    /// <summary>One finding a rule, in the order of the method.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>The smallest change; null when nothing it looks at is broken.</summary>
    public required SmallestChange? SmallestChange { get; init; }

    /// <summary>Threshold power in force, and what recent rides say beside it; null when no ride has power or a threshold.</summary>
    public ThresholdsEntry? Thresholds { get; init; }

    /// <summary>Each rule over the last eight weeks, in the order of the method.</summary>
    public ImmutableArray<RuleHistoryEntry> RuleHistory { get; init; } = [];

    /// <summary>The last four weeks day by day, oldest first, the reviewed one last: what a roster draws.</summary>
    [JsonIgnore]
    public ImmutableArray<SmallWeek> LastWeeks { get; init; } = [];

    /// <summary>The next event from the as-of date on; null when none is known.</summary>
    [JsonIgnore]
    public RosterEntry.Event? NextEvent { get; init; }

    /// <summary>Whether the rider improves; null where nothing was looked at.</summary>
    public ProgressEntry? Progress { get; init; }

    /// <summary>Files that could not be used, repairs, and assumptions.</summary>
    public required ImmutableArray<NoticeEntry> Notices { get; init; }

    /// <summary>Page one in words: what the terminal and the text begin with as well.</summary>
    public required SummaryEntry Summary { get; init; }

    /// <summary>Limits of the low and the middle band, % of threshold power.</summary>
    public ImmutableArray<double> BandCutsPercent { get; init; } = [76, 106];

    /// <summary>Limits of the low and the middle band, % of threshold heart rate; null where no ride of the week was measured by heart rate.</summary>
    public ImmutableArray<double>? HeartRateCutsPercent { get; init; }

    /// <summary>The coach's note, as plain Markdown; null without one.</summary>
    public string? Note { get; init; }
}
