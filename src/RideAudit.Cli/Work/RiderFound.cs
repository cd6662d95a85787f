using System.Collections.Immutable;
using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Cli.Work;

/// <summary>A rider, and what the reader of the review should know about where it came from.</summary>
/// <param name="Rider">The rider.</param>
/// <param name="Notices">Assumptions.</param>
internal sealed record RiderFound(Rider Rider, ImmutableArray<FileNotice> Notices);
