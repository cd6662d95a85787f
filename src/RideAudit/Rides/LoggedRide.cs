using NodaTime;
using RideAudit.Units;

namespace RideAudit.Rides;

/// <summary>One row of a ride log.</summary>
public sealed record LoggedRide
{
    /// <summary>The log and its line, such as <c>log.csv#12</c>.</summary>
    public required string File { get; init; }

    /// <summary>The ride's file as the row names it; null where it names none.</summary>
    public string? RideFile { get; init; }

    /// <summary>Local date; null where only the file is named.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>Local start; null when the row has none.</summary>
    public LocalTime? Start { get; init; }

    /// <summary>Minutes ridden, above 0; null where the row only speaks of a recorded ride.</summary>
    public required double? Minutes { get; init; }

    /// <summary>What it says of power and heart rate.</summary>
    public required LoggedFigures Figures { get; init; }

    /// <summary>Session rating, 0 to 10; null when not given.</summary>
    public double? Rating { get; init; }

    /// <summary>What the row says it was; null when not given.</summary>
    public RideKind? Kind { get; init; }

    /// <summary>The row's note as written; null without one.</summary>
    public string? Note { get; init; }

    /// <summary>Offset from UTC on that date.</summary>
    public Offset Offset { get; init; }
}
