using NodaTime;

namespace RideAudit.Document;

/// <summary>A rider's next event.</summary>
/// <param name="From">Its first day.</param>
/// <param name="To">Its last day.</param>
/// <param name="Name">What the plan table calls it; null without a name.</param>
public sealed record RosterEvent(LocalDate From, LocalDate To, string? Name);
