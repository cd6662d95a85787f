using System.Collections.Immutable;
using NodaTime;

namespace RideAudit.Document.Layouts;

/// <summary>Weeks to come: laid out, or read from a plan table and judged before they are ridden.</summary>
public sealed record NextDocument
{
    /// <summary>Name and version of the shape of weeks laid out.</summary>
    public const string LaidOut = "rideaudit-next/1";

    /// <summary>Name and version of the shape of weeks judged.</summary>
    public const string Checked = "rideaudit-check/1";

    /// <summary><see cref="LaidOut"/> or <see cref="Checked"/>.</summary>
    public string Schema { get; init; } = LaidOut;

    /// <summary>The date it looks from.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The rider.</summary>
    public required RiderEntry Rider { get; init; }

    /// <summary>The weeks in order, each judged after the one before; empty when none could be laid out, and the notes say why.</summary>
    public required ImmutableArray<NextWeekEntry> Weeks { get; init; }

    /// <summary>What is to be known of all the weeks, one plain sentence each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>The cautions every reader sees.</summary>
    public ImmutableArray<string> Cautions { get; init; } = RideAudit.Document.Cautions.All;
}
