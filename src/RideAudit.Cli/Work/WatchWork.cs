using NodaTime;
using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Work;

/// <summary>Reviews a folder whenever its files change. It looks at the folder instead of being told, which works on network drives and cards as well.</summary>
internal static class WatchWork
{
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(500);
    private static readonly Duration Quiet = Duration.FromSeconds(2);
    private static readonly Duration Patience = Duration.FromSeconds(60);

    /// <summary>Watches until Ctrl-C.</summary>
    /// <exception cref="UserError">There is no such folder to begin with.</exception>
    /// <exception cref="OperationCanceledException">Ctrl-C.</exception>
    public static ExitCode Run(Shell shell, ReviewArguments asked)
    {
        var folder = FolderArgument.Existing(shell, asked.Folder);
        var watch = new FolderWatch(Quiet, Patience);
        Tell(shell, asked, $"Watching {asked.Folder}; Ctrl-C stops.");
        while (true)
        {
            shell.Cancel.ThrowIfCancellationRequested();
            switch (watch.Next(FolderLook.Take(folder), shell.Clock.GetCurrentInstant()))
            {
                case WatchStep.Review:
                    Review(shell, asked);
                    break;
                case WatchStep.Gone:
                    Tell(shell, asked, $"{asked.Folder} has gone away; waiting for it to come back.");
                    break;
                case WatchStep.Back:
                    Tell(shell, asked, $"{asked.Folder} is back; waiting for files.");
                    break;
            }
            shell.Cancel.WaitHandle.WaitOne(Pace);
        }
    }

    private static void Review(Shell shell, ReviewArguments asked)
    {
        var done = "Not reviewed";
        try
        {
            ReviewWork.Run(shell, asked);
            done = "Reviewed";
        }
        catch (UserError error)
        {
            shell.WriteError($"rideaudit: {new Marks(shell.Unicode).Show(error.Message)}");
        }
        catch (DirectoryNotFoundException)
        {
            // It went away between the look and the review: the next look says so.
        }
        shell.Out.Flush();
        Tell(shell, asked, $"{done} at {Say.Clock(shell.Clock.GetCurrentInstant().InZone(shell.Zone).TimeOfDay)}; waiting for files.");
    }

    private static void Tell(Shell shell, ReviewArguments asked, string sentence)
    {
        if (!asked.Quiet)
            shell.WriteError(new Marks(shell.Unicode).Show(sentence));
    }
}
