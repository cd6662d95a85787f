using System.CommandLine;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>What the commands share that give one row a ride or a week.</summary>
internal sealed class Rows(Shell shell, ProgramCommand command)
{
    private readonly Argument<string> _folder = command.Folder();
    private readonly Option<string?> _rider = command.Rider();
    private readonly Option<LocalDate?> _since = command.Date("--since", "From this date on.");
    private readonly Option<LocalDate?> _until = command.Date("--until", "Up to and including this date.");
    private readonly Option<TableFormat> _format = command.Format();
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<bool> _strict = command.Strict();

    /// <summary>How rows are written.</summary>
    public Option<TableFormat> Format => _format;

    /// <summary>The same, with dates that leave nothing between them refused while the line is parsed.</summary>
    /// <param name="whose">The command whose options these are.</param>
    public Rows WithRefusals(ProgramCommand whose)
    {
        whose.Refuses(r => r.GetValue(_since) > r.GetValue(_until), "--since is after --until.");
        return this;
    }

    /// <summary>Reads the folder, and writes rows to standard output and nothing else, so that a pipe gets rows only.</summary>
    /// <typeparam name="TDocument">The rows with what belongs to them.</typeparam>
    /// <typeparam name="TRow">A row.</typeparam>
    /// <param name="asked">The parsed line.</param>
    /// <param name="table">What is written.</param>
    public ExitCode Write<TDocument, TRow>(ParseResult asked, Table<TDocument, TRow> table)
    {
        var folder = RiderFolder.Open(shell, asked.GetRequiredValue(_folder), asked.GetValue(_rider));
        var request = folder.Request(asked.GetValue(_asOf));
        var content = folder.Read();
        var all = table.Build(content, folder, request);
        var rows = table.Rows(all);
        if (rows.Count == 0)
            throw folder.NoRide(content);
        var wanted = rows.Where(r => !(table.Last(r) < asked.GetValue(_since)) && !(table.First(r) > asked.GetValue(_until))).ToList();
        var document = table.With(all, wanted);
        if (asked.GetValue(_format) == TableFormat.Json)
            shell.Out.Write(table.Json(document));
        else if (asked.GetValue(_format) == TableFormat.Csv)
            CsvTable.Write(shell.Out, table.Fields, wanted);
        else
            table.Print(new Page(shell, shell.Width), document);
        foreach (var sentence in table.Beside(document))
            shell.Tell(sentence);
        if (wanted.Count == 0)
            shell.Tell($"No {table.Noun} {Asked(asked)}: the last is {table.Of} {Shown.FullDate(table.First(rows[^1]))}.");
        return Finish(asked, content);
    }

    private string Asked(ParseResult asked) => (asked.GetValue(_since), asked.GetValue(_until)) switch
    {
        ({ } since, null) => $"from {Shown.FullDate(since)} on",
        (null, { } until) => $"up to {Shown.FullDate(until)}",
        ({ } since, { } until) => $"from {Shown.FullDate(since)} to {Shown.FullDate(until)}",
        _ => "before the as-of date",
    };

    private ExitCode Finish(ParseResult asked, FolderContent content)
    {
        var unusable = NoticeBound.Of([.. content.Notices.Where(n => n.Unusable)]);
        foreach (var notice in unusable)
            shell.Tell(notice.Line);
        return asked.GetValue(_strict) && unusable.Count > 0 ? ExitCode.FilesNotUsed : ExitCode.Done;
    }

    /// <summary>What differs between rides and weeks.</summary>
    /// <typeparam name="TDocument">The rows with what belongs to them.</typeparam>
    /// <typeparam name="TRow">A row.</typeparam>
    internal sealed record Table<TDocument, TRow>
    {
        /// <summary>What a row is called.</summary>
        public required string Noun { get; init; }

        /// <summary>What stands between a row and its date.</summary>
        public required string Of { get; init; }

        /// <summary>The document of everything.</summary>
        public required Func<FolderContent, RiderFolder, ReviewRequest, TDocument> Build { get; init; }

        /// <summary>Its rows.</summary>
        public required Func<TDocument, IReadOnlyList<TRow>> Rows { get; init; }

        /// <summary>The document with some of its rows.</summary>
        public required Func<TDocument, IReadOnlyList<TRow>, TDocument> With { get; init; }

        /// <summary>A row's first day.</summary>
        public required Func<TRow, LocalDate> First { get; init; }

        /// <summary>A row's last day.</summary>
        public required Func<TRow, LocalDate> Last { get; init; }

        /// <summary>The document as JSON.</summary>
        public required Func<TDocument, string> Json { get; init; }

        /// <summary>The columns of the CSV.</summary>
        public required IReadOnlyList<(string Name, Func<TRow, object?> Value)> Fields { get; init; }

        /// <summary>Writes the table.</summary>
        public required Action<Page, TDocument> Print { get; init; }

        /// <summary>What is said beside the rows.</summary>
        public Func<TDocument, IEnumerable<string>> Beside { get; init; } = _ => [];
    }
}
