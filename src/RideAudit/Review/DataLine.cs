using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Review;

/// <summary>Says in one line which files of the judged week and of the weeks it is compared with lost data or could not be used; those of other times are only counted.</summary>
internal static class DataLine
{
    private const int MostNamed = 3;
    private static readonly string[] Losses = ["truncated", "damaged", "not closed"];

    /// <summary>The line; null when nothing near the week is in doubt.</summary>
    /// <param name="notices">The review’s notices.</param>
    public static string? Of(WeekUnderReview week, ImmutableArray<NoticeEntry> notices)
    {
        var from = week.Week.StartsOn.PlusDays(-7 * NoticeEntry.WeeksLookedBack);
        var losses = notices.Where(n => !n.Unusable && Losses.Contains(n.Problem)).ToArray();
        string[] own = [.. week.Week.Rides.Where(r => losses.Any(n => IsAbout(n, r))).Select(r => $"{Shown.Weekday(r.Date)}’s")];
        var before = week.Past.Weeks.TakeLast(NoticeEntry.WeeksLookedBack).SelectMany(w => w.Rides).Where(r => losses.Any(n => IsAbout(n, r))).ToArray();
        var unusable = notices.Where(n => n.Unusable).ToLookup(n => n.IsNear(from, week.Week.EndsOn));
        var parts = new List<string>();
        if (own.Length > 0)
            parts.Add($"{Shown.List(own.Distinct())} {Shown.Noun(own.Length, "recording is", "recordings are")} incomplete: figures and kind are those of what was kept");
        if (before.Length > 0)
            parts.Add($"{Shown.List(Named(before.Select(r => r.File)))} of the weeks before {Shown.Noun(before.Length, "is", "are")} incomplete");
        if (unusable[true].Any())
            parts.Add($"{Shown.List(Named(unusable[true].Select(n => n.File).OfType<string>(), unusable[true].Sum(n => n.OtherFiles ?? 0)))} could not be used");
        if (parts.Count == 0)
            return null;
        if (unusable[false].Count() is > 0 and var others)
            parts.Add($"of other times {Shown.Count(others, "file")} could not be used");
        // A file is named as it is called, at the beginning of a sentence too.
        var text = string.Join("; ", parts);
        return own.Length > 0 ? Shown.Sentence(text) : text + ".";
    }

    private static bool IsAbout(NoticeEntry notice, RideFigures ride) =>
        notice.File is { } file && (file == ride.File || ride.Parts.Contains(file) || ride.File.StartsWith(file + "#", StringComparison.Ordinal));

    private static IEnumerable<string> Named(IEnumerable<string> files, int others = 0)
    {
        var all = files.Distinct().ToArray();
        return all.Length + others <= MostNamed ? all : [.. all.Take(MostNamed - 1), $"{Shown.Number(all.Length + others - MostNamed + 1)} more"];
    }
}
