using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Formatting;
using RideAudit.Ingest;

namespace RideAudit.Cli.Commands;

/// <summary>Reviews again when files arrive. It looks at the folder instead of being told, which works on network drives and cards as well.</summary>
/// <param name="shell">The world.</param>
/// <param name="review">What a folder is reviewed with.</param>
/// <param name="output">Where a folder of riders is written.</param>
internal sealed class WatchCommand(Shell shell, ReviewCommand review, Option<string?> output)
{
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(500);
    private static readonly Duration Calm = Duration.FromSeconds(2);
    private static readonly Duration Patience = Duration.FromSeconds(60);

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "watch",
            "Review FOLDER now and again whenever files arrive, until Ctrl-C. Takes the options of review; a folder of riders is reviewed as roster does.",
            ("rideaudit watch my-rides/", "review now, and again whenever files arrive; Ctrl-C stops"),
            ("rideaudit watch my-rides/ --pdf latest.pdf --quiet", "keep one PDF up to date and say nothing"),
            ("rideaudit watch riders/ --out desk", "keep every rider's review and the overview up to date"));
        var folder = command.OneFolder();
        var output = command.File("--out", "For a folder of riders: the folder to write into. Default: roster-YYYY-MM-DD in the current folder.", "DIR");
        var watch = new WatchCommand(shell, new ReviewCommand(shell, command, folder).WithRefusals(command), output);
        command.Does(asked => watch.Run(asked, asked.GetRequiredValue(folder)[0]));
        return command;
    }

    private ExitCode Run(ParseResult asked, string typed)
    {
        var folder = RiderFolder.ExistingFolder(shell, typed);
        Check(asked, folder);
        var watch = new FolderWatch(Calm, Patience);
        Tell(asked, $"Watching {typed}; Ctrl-C stops.");
        while (true)
        {
            shell.Cancel.ThrowIfCancellationRequested();
            switch (watch.Next(Look(folder), shell.Clock.GetCurrentInstant()))
            {
                case FolderWatch.Step.Review:
                    Review(asked, typed, folder);
                    break;
                case FolderWatch.Step.Gone:
                    Tell(asked, $"{typed} has gone away; waiting for it to come back.");
                    break;
                case FolderWatch.Step.Back:
                    Tell(asked, $"{typed} is back; waiting for files.");
                    break;
            }
            shell.Cancel.WaitHandle.WaitOne(Pace);
        }
    }

    // What cannot be done is said at once and not when the first file arrives.
    private void Check(ParseResult asked, string folder)
    {
        if (RosterRun.IsOfRiders(folder))
            review.Roster(asked, asked.GetValue(output));
        else if (asked.GetValue(output) is not null)
            throw new UserError("--out is for a folder of riders: sub-folders, each with a rider.toml. For one rider, give --pdf.");
        else
            review.Targets(asked, folder);
    }

    // A roster's own table must not set off the next pass.
    private static Dictionary<string, FolderLook.FileState>? Look(string folder) =>
        FolderLook.Take(folder)?.Where(f => !RosterRun.IsOutput(f.Key)).ToDictionary();

    private void Review(ParseResult asked, string typed, string folder)
    {
        var done = "Not reviewed";
        try
        {
            if (RosterRun.IsOfRiders(folder))
                review.Roster(asked, asked.GetValue(output)).Run(typed);
            else
                review.Review(asked, typed);
            done = "Reviewed";
        }
        catch (UserError error)
        {
            shell.TellError(error.Message);
        }
        catch (DirectoryNotFoundException)
        {
            // It went away between the look and the review: the next look says so.
        }
        shell.Out.Flush();
        Tell(asked, $"{done} at {Shown.TimeWithSeconds(shell.Clock.GetCurrentInstant().InZone(shell.Zone).TimeOfDay)}; waiting for files.");
    }

    private void Tell(ParseResult asked, string sentence)
    {
        if (!review.IsQuiet(asked))
            shell.Tell(sentence);
    }
}
