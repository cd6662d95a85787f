using NodaTime;

namespace RideAudit.Document;

/// <summary>One day of a layout.</summary>
/// <param name="Date">Local date.</param>
/// <param name="Kind"><c>rest</c>, <c>recovery</c>, <c>endurance</c>, <c>long</c>, <c>threshold</c>, <c>high</c>; <c>event</c> or <c>away</c> where the rider file says so.</param>
/// <param name="Minutes">Timer time, whole minutes; 0 without a ride.</param>
/// <param name="ExpectedStress">Training stress to expect, points, whole.</param>
/// <param name="Sentence">What to ride.</param>
public sealed record NextDayEntry(LocalDate Date, string Kind, int Minutes, double ExpectedStress, string Sentence);
