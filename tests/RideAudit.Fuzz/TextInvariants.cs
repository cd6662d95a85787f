using System.Text;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Report.Fonts;
using RideAudit.Report.Notes;

namespace RideAudit.Fuzz;

/// <summary>What must hold of the readers of what people write, for any text.</summary>
internal static class TextInvariants
{
    private const float ColumnPt = 300;

    /// <summary>A rider file: a rider or mistakes, each with its place.</summary>
    public static string CheckRider(byte[] bytes)
    {
        var read = RiderFileReader.Read(Encoding.UTF8.GetString(bytes), "rider.toml");
        Invariant.Require((read.Rider is null) == !read.Mistakes.IsEmpty, "a rider, or what is wrong");
        foreach (var mistake in read.Mistakes)
        {
            Invariant.Require(mistake is { Line: >= 1, Column: >= 1 }, "a mistake has a place");
            Invariant.RequireSentence(mistake.Allowed);
        }
        return $"{read.Mistakes.Length} mistakes";
    }

    /// <summary>A plan table: read without an exception, and what is written of it reads as the same sessions.</summary>
    public static string CheckPlan(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        PlanTableReader.IsPlan(text);
        var sheet = PlanTableReader.Read(text, "plan.csv");
        var sessions = sheet.Rows.Select(r => r.Session).OfType<PlannedSession>().ToArray();
        // A table that broke off was read as far as it went, and what is written is whole.
        var again = PlanTableReader.Read(PlanTableWriter.Write(sheet), "plan.csv").Rows.Select(r => r.Session).OfType<PlannedSession>().ToArray();
        Invariant.Require(sessions.Select(s => s.Date).SequenceEqual(again.Select(s => s.Date)), "written and read again, a table has the same sessions");
        return $"{sessions.Length} sessions, {sheet.Mistakes.Length} mistakes";
    }

    /// <summary>A coach's note: set in a column, its parts as long as the whole.</summary>
    public static string CheckNote(byte[] bytes)
    {
        var block = NoteBlock.Of(Encoding.UTF8.GetString(bytes), FontSet.OfThisMachine, ColumnPt);
        var (head, tail) = block.Split(block.Height / 2);
        Invariant.Require(head.Count + (tail?.Count ?? 0) == block.Count, "a note's parts have its lines");
        return $"{block.Count} lines";
    }
}
