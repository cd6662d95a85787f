using System.Collections.Immutable;

namespace RideAudit.Plan.Table;

/// <summary>Knows a plan table by its header row.</summary>
internal static class PlanHeader
{
    // Columns that only a log of ridden rides has.
    private static readonly string[] Ridden =
        ["file", "rating", "rpe", "session_rating", "average_power", "avg_power", "mean_power", "normalised_power", "normalized_power", "average_heart_rate", "avg_heart_rate", "mean_heart_rate"];

    private static readonly PlanColumn[] OnlyPlanned = [PlanColumn.Session, PlanColumn.Stress, PlanColumn.Blocks, PlanColumn.MadeBy];

    public static string NameOf(PlanColumn column) => column == PlanColumn.MadeBy ? "made_by" : column.ToString().ToLowerInvariant();

    /// <summary>Which cell holds which column; of two for one column the first counts.</summary>
    public static ImmutableSortedDictionary<PlanColumn, int> Understand(IReadOnlyList<string> header)
    {
        var columns = ImmutableSortedDictionary.CreateBuilder<PlanColumn, int>();
        foreach (var column in Enum.GetValues<PlanColumn>())
        {
            for (var at = 0; at < header.Count; at++)
            {
                if (Plain(header[at]) == NameOf(column))
                    columns.TryAdd(column, at);
            }
        }
        return columns.ToImmutable();
    }

    /// <summary>A date, a kind and minutes, and nothing that only ridden rides have.</summary>
    /// <remarks>
    /// A log of ridden rides may have the same three. A start time makes it one, unless a column says that something is planned:
    /// a plan taken for a log would count rides that nobody has ridden, so the doubtful case is a plan.
    /// </remarks>
    public static bool Is(IReadOnlyList<string> header)
    {
        var columns = Understand(header);
        var names = header.Select(Plain).ToHashSet();
        return columns.ContainsKey(PlanColumn.Date) && columns.ContainsKey(PlanColumn.Kind) && columns.ContainsKey(PlanColumn.Minutes)
            && !Ridden.Any(names.Contains)
            && (!(names.Contains("start") || names.Contains("start_time")) || OnlyPlanned.Any(columns.ContainsKey));
    }

    private static string Plain(string header) =>
        header.Trim().TrimStart('\uFEFF').Trim().ToLowerInvariant().Replace(' ', '_').Replace('-', '_');
}
