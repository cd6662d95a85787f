using System.Text;
using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Review;

namespace RideAudit.Cli.Work;

/// <summary>Reads a folder, reviews a week, writes what was asked for.</summary>
internal static class ReviewWork
{
    private const int PageMeasure = 100;

    /// <summary>Runs a review.</summary>
    /// <param name="shell">The world.</param>
    /// <param name="asked">What was asked for.</param>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public static ExitCode Run(Shell shell, ReviewArguments asked)
    {
        var folder = FolderArgument.Existing(shell, asked.Folder);
        CheckTargets(shell, asked);
        var rider = RiderSource.Find(shell, asked.Rider, folder);
        var note = NoteSource.Find(shell, asked.Note, folder);
        WeekAsked.Check(asked.Week, asked.AsOf ?? shell.Today(rider.Rider.TimeZone ?? shell.Zone), rider.Rider);
        var content = FolderSource.Read(shell, folder, rider, asked.Quiet);
        var request = new ReviewRequest
        {
            Today = shell.Today(rider.Rider.TimeZone ?? shell.Zone),
            AsOf = asked.AsOf,
            WeekOf = asked.Week,
            Note = note,
        };
        var (document, traces) = ReviewBuilder.ReviewWithTraces(content, rider.Rider, request) ?? throw NoRides.Error(asked.Folder, content);
        var written = WriteFiles(shell, asked, document, traces);
        Print(shell, asked, document, written);
        if (asked.Strict && (asked.Quiet || asked.JsonToOutput))
            TellUnusable(shell, document);
        return CodeOf(asked, document);
    }

    private static void CheckTargets(Shell shell, ReviewArguments asked)
    {
        foreach (var target in new[] { asked.Pdf, asked.JsonToOutput ? null : asked.Json, asked.Png })
            if (target is not null)
                OutputFile.Check(shell.FullPath(target), target);
    }

    private static List<string> WriteFiles(Shell shell, ReviewArguments asked, ReviewDocument document, ReviewTraces traces)
    {
        var written = new List<string>();
        if (!asked.NoPdf)
            Write(asked.Pdf ?? $"review-{Say.Iso(document.Week.StartsOn)}.pdf", s => Drawing.WritePdf(s, document, traces, asked.PageOptions));
        if (asked.Png is not null)
            Write(asked.Png, s => Drawing.WritePng(s, document, asked.PageOptions));
        if (asked.Json is not null && !asked.JsonToOutput)
            Write(asked.Json, s => s.Write(Encoding.UTF8.GetBytes(ReviewJson.Write(document))));
        return written;

        void Write(string target, Action<Stream> write)
        {
            shell.Cancel.ThrowIfCancellationRequested();
            OutputFile.Write(shell.FullPath(target), write, shell.Cancel, target);
            written.Add(target);
        }
    }

    private static void Print(Shell shell, ReviewArguments asked, ReviewDocument document, List<string> written)
    {
        if (asked.JsonToOutput)
            shell.Out.Write(ReviewJson.Write(document));
        else if (asked.Text)
            PlainReview.Write(new Page(shell, PlainReview.Measure), document);
        else if (!asked.Quiet)
            Summary.Write(new Page(shell, PageMeasure), document, written);
    }

    // An exit code of 4 without a word would leave its reader guessing.
    private static void TellUnusable(Shell shell, ReviewDocument document)
    {
        shell.Out.Flush();
        foreach (var notice in document.Notices.Where(n => n.Unusable))
            shell.Error.Write(new Marks(shell.Unicode).Show($"{notice.File}: {notice.Sentence}") + "\n");
    }

    private static ExitCode CodeOf(ReviewArguments asked, ReviewDocument document)
    {
        if (asked.Strict && document.Notices.Any(n => n.Unusable))
            return ExitCode.FilesNotUsed;
        return asked.FailOnBroken && document.Summary.Broken > 0 ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
