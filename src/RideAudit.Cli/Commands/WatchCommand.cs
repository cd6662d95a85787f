using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Terminal;
using RideAudit.Formatting;
using RideAudit.Ingest;

namespace RideAudit.Cli.Commands;

/// <summary>Reviews again when files arrive. It looks at the folder instead of being told, which works on network drives and cards as well.</summary>
internal sealed class WatchCommand(Shell shell, ReviewCommand review)
{
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(500);
    private static readonly Duration Calm = Duration.FromSeconds(2);
    private static readonly Duration Patience = Duration.FromSeconds(60);

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "watch",
            "Review FOLDER now and again whenever files arrive, until Ctrl-C. Takes the options of review.",
            ("rideaudit watch my-rides/", "review now, and again whenever files arrive; Ctrl-C stops"),
            ("rideaudit watch my-rides/ --pdf latest.pdf --quiet", "keep one PDF up to date and say nothing"));
        var folder = command.OneFolder();
        var watch = new WatchCommand(shell, new ReviewCommand(shell, command, folder).WithRefusals(command));
        command.Does(asked => watch.Run(asked, asked.GetRequiredValue(folder)[0]));
        return command;
    }

    private ExitCode Run(ParseResult asked, string typed)
    {
        var folder = RiderFolder.ExistingFolder(shell, typed);
        review.Targets(asked, folder);
        var watch = new FolderWatch(Calm, Patience);
        Tell(asked, $"Watching {typed}; Ctrl-C stops.");
        while (true)
        {
            shell.Cancel.ThrowIfCancellationRequested();
            switch (watch.Next(FolderLook.Take(folder), shell.Clock.GetCurrentInstant()))
            {
                case FolderWatch.Step.Review:
                    Review(asked, typed);
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

    private void Review(ParseResult asked, string typed)
    {
        var done = "Not reviewed";
        try
        {
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
