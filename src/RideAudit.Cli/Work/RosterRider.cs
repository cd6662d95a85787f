using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Ingest;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Work;

/// <summary>Reviews one rider of a roster. Whatever goes wrong stays with that rider.</summary>
internal static class RosterRider
{
    /// <summary>Reviews a folder.</summary>
    /// <returns>The review, or why there is none.</returns>
    public static RosterInput Review(Shell shell, RosterArguments asked, string folder, string output)
    {
        var name = Path.GetFileName(folder);
        try
        {
            return Reviewed(shell, asked, folder, name, output);
        }
        catch (UserError error)
        {
            return new RosterInput(name, null, error.Message, null);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return new RosterInput(name, null, $"A fault of the program: {fault.GetType().Name}: {fault.Message}", null);
        }
    }

    private static RosterInput Reviewed(Shell shell, RosterArguments asked, string folder, string name, string output)
    {
        var rider = RiderSource.Find(shell, typed: null, folder);
        WeekAsked.Check(asked.Week, asked.AsOf ?? shell.Today(rider.Rider.TimeZone ?? shell.Zone), rider.Rider);
        var content = FolderReader.Read(folder, rider.Rider, shell.Zone, progress: null, shell.Cancel);
        content = content with { Notices = [.. rider.Notices, .. content.Notices] };
        var request = new ReviewRequest
        {
            Today = shell.Today(rider.Rider.TimeZone ?? shell.Zone),
            AsOf = asked.AsOf,
            WeekOf = asked.Week,
            Note = NoteSource.Find(shell, typed: null, folder),
        };
        var (document, traces) = ReviewBuilder.ReviewWithTraces(content, rider.Rider, request) ?? throw NoRides.Error(name, content);
        var file = $"{name}-review-{Say.Iso(document.Week.StartsOn)}.pdf";
        OutputFile.Write(Path.Combine(output, file), s => Drawing.WritePdf(s, document, traces, new PageOptions { Paper = asked.Paper }), shell.Cancel);
        return new RosterInput(name, document, null, file) { HasRiderFile = File.Exists(Path.Combine(folder, RiderSource.FileName)) };
    }
}
