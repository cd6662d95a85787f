using System.CommandLine;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Options;

/// <summary>The folder of ride files.</summary>
internal static class FolderArgument
{
    /// <summary>A new argument.</summary>
    /// <param name="description">What the folder holds.</param>
    public static Argument<string> Create(string description = "Folder of ride files (.fit, .tcx, .gpx, .csv, also as .gz or in a .zip), read at any depth.") =>
        new("FOLDER") { Description = description };

    /// <summary>The folder's full path.</summary>
    /// <exception cref="UserError">There is no such folder.</exception>
    public static string Existing(Shell shell, string typed)
    {
        var path = shell.FullPath(typed);
        if (Directory.Exists(path))
            return path;
        if (File.Exists(path))
            throw new UserError($"{typed} is a file: give the folder that holds the ride files.");
        throw new UserError($"There is no folder {typed}. Give the folder that holds the ride files.");
    }
}
