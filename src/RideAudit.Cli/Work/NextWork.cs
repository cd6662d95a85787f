using System.Text;
using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Next;
using RideAudit.Review;

namespace RideAudit.Cli.Work;

/// <summary>Lays out the week after the reviewed one.</summary>
internal static class NextWork
{
    /// <summary>Runs a layout.</summary>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public static ExitCode Run(Shell shell, NextArguments asked)
    {
        var folder = FolderArgument.Existing(shell, asked.Folder);
        if (asked.Ics is not null)
            OutputFile.Check(shell.FullPath(asked.Ics), asked.Ics);
        var rider = RiderSource.Find(shell, asked.Rider, folder);
        WeekAsked.Check(asked.Week, asked.AsOf ?? shell.Today(rider.Rider.TimeZone ?? shell.Zone), rider.Rider);
        var content = FolderSource.Read(shell, folder, rider, quiet: false);
        var request = new ReviewRequest { Today = shell.Today(rider.Rider.TimeZone ?? shell.Zone), AsOf = asked.AsOf, WeekOf = asked.Week };
        var document = NextWeekBuilder.Build(content, rider.Rider, request) ?? throw NoRides.Error(asked.Folder, content);
        if (asked.Ics is not null)
        {
            var calendar = CalendarFile.Write(document, shell.Clock.GetCurrentInstant());
            OutputFile.Write(shell.FullPath(asked.Ics), s => s.Write(Encoding.UTF8.GetBytes(calendar)), shell.Cancel, asked.Ics);
        }
        if (asked.Format == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else
            NextWeekPage.Write(new Page(shell, 100), document, asked.Ics);
        return ExitCode.Done;
    }
}
