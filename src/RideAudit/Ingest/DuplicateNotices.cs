using System.Globalization;
using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Names the recordings that were left out for another one of the same riding.</summary>
internal static class DuplicateNotices
{
    /// <summary>Adds a notice for each; a file that has a notice of its own already is told of once, not twice.</summary>
    public static void Add(List<FileNotice> notices, IReadOnlyList<DuplicateFinder.Duplicate> duplicates)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < notices.Count && duplicates.Count > 0; i++)
            places.TryAdd(notices[i].File, i);
        foreach (var duplicate in duplicates)
        {
            var file = duplicate.LeftOut.File;
            if (places.TryAdd(file, notices.Count))
                notices.Add(new FileNotice(file, "duplicate", null, $"The same riding as {Kept(duplicate)}", false));
            else
                notices[places[file]] = notices[places[file]] with { Sentence = $"{notices[places[file]].Sentence} It is the same riding as {Kept(duplicate)}" };
        }
    }

    private static string Kept(DuplicateFinder.Duplicate duplicate) => duplicate.GivenSeconds > 0
        ? $"{duplicate.Kept.File}: that gave {Minutes(duplicate.KeptSeconds)}, this one {Minutes(duplicate.GivenSeconds)} that it lacks."
        : $"{duplicate.Kept.File}, which is kept.";

    private static string Minutes(double seconds) => Math.Round(seconds / 60) is var minutes && minutes == 1
        ? "1 minute"
        : string.Create(CultureInfo.InvariantCulture, $"{minutes} minutes");
}
