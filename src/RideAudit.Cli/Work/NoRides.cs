using System.Text;
using RideAudit.Cli.Output;
using RideAudit.Ingest;

namespace RideAudit.Cli.Work;

/// <summary>The error for a folder that holds no usable ride.</summary>
internal static class NoRides
{
    /// <summary>Names the folder and every file that could not be used, with the reason.</summary>
    /// <param name="folder">The folder as typed.</param>
    /// <param name="content">What it held.</param>
    public static UserError Error(string folder, FolderContent content)
    {
        var text = new StringBuilder($"No usable ride in {folder}: {Say.Count(content.FilesSeen, "file")} looked at. ");
        text.Append("Ride files are .fit, .tcx, .gpx or .csv, each also as .gz or in a .zip; rides on or after the as-of date are left out.");
        foreach (var notice in content.Notices.Where(n => n.Unusable))
            text.Append($"\n  {notice.File}: {notice.Sentence}");
        return new UserError(text.ToString(), ExitCode.NoRide);
    }
}
