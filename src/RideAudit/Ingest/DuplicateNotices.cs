using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>Names the recordings that were left out for another one of the same riding.</summary>
internal static class DuplicateNotices
{
    /// <summary>Adds a notice for each; a file that has a notice of its own already is told of once, not twice.</summary>
    public static void Add(List<FileNotice> notices, IReadOnlyList<(Recording LeftOut, Recording Kept)> duplicates)
    {
        foreach (var (leftOut, kept) in duplicates)
        {
            var at = notices.FindIndex(n => n.File == leftOut.File);
            if (at < 0)
                notices.Add(new FileNotice(leftOut.File, "duplicate", null, $"The same riding as {kept.File}, which is kept.", false));
            else
                notices[at] = notices[at] with { Sentence = $"{notices[at].Sentence} It is the same riding as {kept.File}, which is kept." };
        }
    }
}
