using System.Collections.Immutable;

namespace RideAudit.Plan.Table;

/// <summary>One row of a plan table as it stands in the file.</summary>
/// <param name="Line">Line it begins on, 1 first; 0 for a row that is not in a file yet.</param>
/// <param name="Cells">Every cell as text, unknown columns included.</param>
/// <param name="Session">What it plans; null for a row that is blank or broken, which is kept as it is.</param>
public sealed record PlanRow(int Line, ImmutableArray<string> Cells, PlannedSession? Session);
