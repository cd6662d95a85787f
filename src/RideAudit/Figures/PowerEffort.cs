using NodaTime;

namespace RideAudit.Figures;

/// <summary>A best mean power and the ride it was ridden in.</summary>
/// <param name="File">The ride.</param>
/// <param name="Date">Its local date.</param>
/// <param name="Best">The window.</param>
internal sealed record PowerEffort(string File, LocalDate Date, BestPower Best)
{
    /// <summary>True when two efforts share riding: they are then one effort looked at twice.</summary>
    internal bool Overlaps(PowerEffort other) =>
        File == other.File
        && Best.StartSecond < other.Best.StartSecond + other.Best.DurationSeconds
        && other.Best.StartSecond < Best.StartSecond + Best.DurationSeconds;
}
