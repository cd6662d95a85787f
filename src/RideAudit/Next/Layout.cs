using System.Collections.Immutable;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>A week laid out, and what it came to.</summary>
/// <param name="Rides">The rides of each of the seven days; none on a day already ridden.</param>
/// <param name="Facts">The week ridden exactly so.</param>
/// <param name="Score">Smaller is better.</param>
/// <param name="Tried">Layouts that were judged to find it.</param>
internal sealed record Layout(ImmutableArray<ImmutableArray<StockRide>> Rides, WeekFacts Facts, double Score, int Tried);
