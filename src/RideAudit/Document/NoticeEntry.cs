using System.Text.Json.Serialization;
using NodaTime;

namespace RideAudit.Document;

/// <summary>Something the reader should know about the data: a file not used, a repair, an assumption.</summary>
/// <param name="File">The file; null when it is about the whole folder, or counts files that are not named.</param>
/// <param name="Problem">One or two words: <c>truncated</c>, <c>not a ride</c>, <c>duplicate</c>, <c>assumption</c>.</param>
/// <param name="Kept">What was kept; null when nothing had to be given up.</param>
/// <param name="Sentence">One plain sentence.</param>
/// <param name="Unusable">True when the file could not be used at all.</param>
public sealed record NoticeEntry(string? File, string Problem, string? Kept, string Sentence, bool Unusable = false)
{
    /// <summary>How many weeks before the judged one a file that is missing could change what is said of it.</summary>
    internal const int WeeksLookedBack = 6;

    /// <summary>How many files it counts without naming them; null when it is about one file, or the whole folder.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? OtherFiles { get; init; }

    /// <summary>The date in the file’s name; null where there is none.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>How many files it is about; those about the whole folder count as one.</summary>
    internal int Files => OtherFiles ?? 1;

    /// <summary>The file may be of those days: its name gives a date among them, or none.</summary>
    internal bool IsNear(LocalDate from, LocalDate to) => Date is not { } date || (date >= from && date <= to);
}
