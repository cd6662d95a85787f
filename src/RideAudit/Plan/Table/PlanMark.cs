using System.Globalization;
using System.Text;
using RideAudit.Formatting;

namespace RideAudit.Plan.Table;

/// <summary>The mark in the column <c>made_by</c> by which a row written by this program is told from one made, or changed, by hand.</summary>
/// <remarks>
/// The mark carries a sum over what the row plans: a row that somebody changed no longer fits its mark and is theirs.
/// The sum is FNV-1a, 32 bits, over the values and not their spelling, so that saving the table in a spreadsheet changes nothing.
/// </remarks>
internal static class PlanMark
{
    private const string Maker = "rideaudit";
    private const uint Basis = 2166136261;
    private const uint Prime = 16777619;

    public static string Of(PlannedSession session) => $"{Maker} {SumOf(session):x8}";

    public static bool Is(string? written, PlannedSession session) => Of(session).Equals(written?.Trim(), StringComparison.OrdinalIgnoreCase);

    private static uint SumOf(PlannedSession session)
    {
        var text = string.Join('\n',
            session.Date.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture),
            PlannedKinds.WordOf(session.Kind),
            session.Minutes?.ToString(CultureInfo.InvariantCulture),
            session.Session,
            session.Note,
            session.Stress?.ToString("0.#", CultureInfo.InvariantCulture),
            session.Blocks?.ToString());
        if (session.Exception is { } exception)
            text += "\n" + Words.Of(exception);
        return Encoding.UTF8.GetBytes(text).Aggregate(Basis, (sum, letter) => unchecked((sum ^ letter) * Prime));
    }
}
