namespace RideAudit.Plan.Table;

/// <summary>A row of a plan table that cannot be used.</summary>
/// <param name="File">The table's name.</param>
/// <param name="Line">Line, 1 first.</param>
/// <param name="Column">The column's header; the number of the cell, 1 first, stands in <paramref name="Cell"/>.</param>
/// <param name="Cell">The cell in its row, 1 first.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Allowed">What is allowed.</param>
/// <param name="Nearest">The nearest known word; null when none is near.</param>
public sealed record PlanMistake(string File, int Line, string Column, int Cell, string Found, string Allowed, string? Nearest = null);
