using NodaTime;

namespace RideAudit.Document;

/// <summary>Something the reader should know about the data: a file not used, a repair, an assumption.</summary>
/// <param name="File">The file; null when it is about the whole folder.</param>
/// <param name="Problem">One or two words: <c>truncated</c>, <c>not a ride</c>, <c>duplicate</c>, <c>assumption</c>.</param>
/// <param name="Kept">What was kept; null when nothing had to be given up.</param>
/// <param name="Sentence">One plain sentence.</param>
/// <param name="Unusable">True when the file could not be used at all.</param>
public sealed record NoticeEntry(string? File, string Problem, string? Kept, string Sentence, bool Unusable = false)
{
    /// <summary>How many weeks before the judged one a file that is missing could change what is said of it.</summary>
    internal const int WeeksLookedBack = 6;

    /// <summary>The date in the file’s name; null where there is none.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>The file may be of those days: its name gives a date among them, or none.</summary>
    internal bool IsNear(LocalDate from, LocalDate to) => Date is not { } date || (date >= from && date <= to);
}
