using NodaTime;

namespace RideAudit.Rides;

/// <summary>One row of a ride log.</summary>
public sealed record LoggedRide
{
    /// <summary>The log and its line, such as <c>log.csv#12</c>.</summary>
    public required string File { get; init; }

    /// <summary>Local date.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>Local start; null when the row has none.</summary>
    public LocalTime? Start { get; init; }

    /// <summary>Minutes ridden; above 0.</summary>
    public required double Minutes { get; init; }

    /// <summary>What it says of power and heart rate.</summary>
    public required LoggedFigures Figures { get; init; }

    /// <summary>Session rating, 0 to 10; null when not given.</summary>
    public double? Rating { get; init; }

    /// <summary>Offset from UTC on that date.</summary>
    public Offset Offset { get; init; }
}
