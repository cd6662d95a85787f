using System.Text;
using RideAudit.Formatting;
using RideAudit.Ingest;

namespace RideAudit.Review;

/// <summary>What is said of a folder that holds no usable ride.</summary>
public static class NoRides
{
    /// <summary>Names the folder and the files that could not be used, with the reason, a line each; of very many files the first, and how many more.</summary>
    /// <param name="folder">The folder's name as it is to be shown.</param>
    /// <param name="content">What it held.</param>
    public static string Sentence(string folder, FolderContent content)
    {
        var text = new StringBuilder($"No usable ride in {folder}: {Shown.Tally(content.FilesSeen, "file")} looked at. ");
        text.Append("Ride files are .fit, .tcx, .gpx or .csv, each also as .gz or in a .zip; rides on or after the as-of date are left out.");
        foreach (var notice in NoticeBound.Of([.. content.Notices.Where(n => n.Unusable)]))
            text.Append($"\n  {notice.Line}");
        return text.ToString();
    }
}
