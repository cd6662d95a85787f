using RideAudit.Cli.Options;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Review;

namespace RideAudit.Cli.Work;

/// <summary>Rides, weeks and rules, as rows.</summary>
internal static class TableWork
{
    /// <summary>One row a ride.</summary>
    public static ExitCode Rides(Shell shell, TableArguments asked)
    {
        var (content, rider, request) = Read(shell, asked);
        var all = ReviewBuilder.Rides(content, rider.Rider, request);
        if (all.Rides.IsEmpty)
            throw NoRides.Error(asked.Folder, content);
        var document = all with { Rides = [.. all.Rides.Where(r => asked.Wants(r.StartsAt.Date))] };
        if (asked.Format == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else if (asked.Format == TableFormat.Csv)
            CsvTable.Write(shell.Out, document);
        else
            RideTable.Write(new Page(shell, shell.Width), document.Rides, RideNotices.Of(content, document.Rides));
        if (document.Rides.IsEmpty)
            TellNone(shell, $"No ride {Asked(asked)}: the last is of {Say.Date(all.Rides[^1].StartsAt.Date)}.");
        return Finish(shell, asked, content);
    }

    /// <summary>One row a week.</summary>
    public static ExitCode Weeks(Shell shell, TableArguments asked)
    {
        var (content, rider, request) = Read(shell, asked);
        var all = ReviewBuilder.Weeks(content, rider.Rider, request);
        if (all.Weeks.IsEmpty)
            throw NoRides.Error(asked.Folder, content);
        var document = all with { Weeks = [.. all.Weeks.Where(w => asked.Wants(w.StartsOn, w.StartsOn.PlusDays(6)))] };
        if (asked.Format == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else if (asked.Format == TableFormat.Csv)
            CsvTable.Write(shell.Out, document);
        else
            WeekTable.Write(new Page(shell, shell.Width), document.Weeks);
        shell.Out.Flush();
        foreach (var notice in document.Notices)
            shell.Error.Write(new Marks(shell.Unicode).Show(notice.Sentence) + "\n");
        if (document.Weeks.IsEmpty)
            TellNone(shell, $"No week {Asked(asked)}: the last is that of {Say.Date(all.Weeks[^1].StartsOn)}.");
        return Finish(shell, asked, content);
    }

    /// <summary>One row a rule.</summary>
    /// <param name="shell">The world.</param>
    /// <param name="riderFile">The rider file as typed; null: defaults.</param>
    /// <param name="format">How rows are written.</param>
    public static ExitCode Rules(Shell shell, string? riderFile, TableFormat format)
    {
        var rider = RiderSource.Find(shell, riderFile, folder: null).Rider;
        var document = ReviewBuilder.Rules(rider);
        if (format == TableFormat.Json)
            shell.Out.Write(ReviewJson.Write(document));
        else if (format == TableFormat.Csv)
            CsvTable.Write(shell.Out, document);
        else
            WriteRules(new Page(shell, 110), rider, riderFile is null, document);
        return ExitCode.Done;
    }

    private static void WriteRules(Page page, Rider rider, bool assumed, RulesDocument document)
    {
        var plan = PlanInForce.For(rider, []);
        var volume = plan.Tier is { } tier ? $"{Words.Of(tier)} volume" : "middle volume, as no hours are planned";
        page.Text($"{(assumed ? "No rider file: the limits assume" : $"{rider.Label}: limits of")} {volume}, and {Words.Of(rider.Experience)} experience."
            + (assumed ? " '--rider FILE' shows those of a rider." : ""), Tone.Quiet);
        page.Blank();
        RuleTable.Write(page, document.Rules);
    }

    private static (FolderContent Content, RiderFound Rider, ReviewRequest Request) Read(Shell shell, TableArguments asked)
    {
        var folder = FolderArgument.Existing(shell, asked.Folder);
        var rider = RiderSource.Find(shell, asked.Rider, folder);
        var content = FolderSource.Read(shell, folder, rider, quiet: false);
        var request = new ReviewRequest { Today = shell.Today(rider.Rider.TimeZone ?? shell.Zone), AsOf = asked.AsOf, WithPowerCurves = asked.PowerCurve };
        return (content, rider, request);
    }

    private static void TellNone(Shell shell, string sentence)
    {
        shell.Out.Flush();
        shell.Error.Write(new Marks(shell.Unicode).Show(sentence) + "\n");
    }

    private static string Asked(TableArguments asked) => (asked.Since, asked.Until) switch
    {
        ({ } since, null) => $"from {Say.Date(since)} on",
        (null, { } until) => $"up to {Say.Date(until)}",
        ({ } since, { } until) => $"from {Say.Date(since)} to {Say.Date(until)}",
        _ => "before the as-of date",
    };

    // Rows go to standard output and nothing else does, so that a pipe gets rows only.
    private static ExitCode Finish(Shell shell, TableArguments asked, FolderContent content)
    {
        var marks = new Marks(shell.Unicode);
        shell.Out.Flush();
        foreach (var notice in content.Notices.Where(n => n.Unusable))
            shell.Error.Write(marks.Show($"{notice.File}: {notice.Sentence}") + "\n");
        return asked.Strict && content.Notices.Any(n => n.Unusable) ? ExitCode.FilesNotUsed : ExitCode.Done;
    }
}
