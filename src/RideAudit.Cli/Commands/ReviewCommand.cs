using System.CommandLine;
using System.Text;
using NodaTime;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Cli.Commands;

/// <summary>The main job: one judged week.</summary>
/// <param name="shell">The world.</param>
/// <param name="command">The command whose options these are: review, or watch.</param>
internal sealed class ReviewCommand(Shell shell, ProgramCommand command, Argument<string[]> folders)
{
    private const int PageMeasure = 100;

    // From well done to badly.
    private static readonly ExitCode[] Worse = [ExitCode.Done, ExitCode.RuleBroken, ExitCode.FilesNotUsed, ExitCode.NoRide, ExitCode.WrongUse];

    private readonly Option<string?> _rider = command.Rider();
    private readonly Option<LocalDate?> _asOf = command.AsOf();
    private readonly Option<LocalDate?> _week = command.Date("--week", "Review the week that holds this date. Default: the last week that has ended.");
    private readonly Option<string?> _pdf = command.File("--pdf", "Write the PDF here. Default: review-YYYY-MM-DD.pdf (the week's first day) in the current folder.");
    private readonly Option<bool> _noPdf = command.Flag("--no-pdf", "Write no PDF.");
    private readonly Option<string?> _json = command.File("--json", "Write the review as JSON here; '-' is standard output, and then nothing else goes there.");
    private readonly Option<string?> _png = command.File("--png", "Write the card for a phone here: a picture, portrait, 1080 px wide.");
    private readonly Option<string?> _pagePng = command.File("--page-png", "Write page one as a picture here.");
    private readonly Option<bool> _text = command.Flag("--text", "Print the whole review as plain text of at most 80 columns instead of the summary.");
    private readonly Option<Paper> _paper = command.Paper("The paper of the PDF. Default: a4.");
    private readonly Option<string?> _note = command.File(
        "--note", "The coach's note for page one: a text, or a file that holds it. Default: note.md in FOLDER, if there is one.", "TEXT|FILE");

    private readonly Option<bool> _room = command.Flag("--room-for-notes", "Leave ruled space for handwriting where there is no note.");
    private readonly Option<bool> _appendix = command.Flag("--appendix", "After the three pages every ride, every limit and the whole method.");
    private readonly Option<bool> _strict = command.Strict();
    private readonly Option<string?> _failOn = command.FailOn();
    private readonly Option<bool> _quiet = command.Quiet();
    private readonly Option<bool> _timings = command.HiddenFlag("--timings", "Say what each phase took.");

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "review",
            "Read every ride under FOLDER, judge the last finished week, write it as a PDF and print a summary.",
            ("rideaudit review my-rides/", "review the last finished week, write review-YYYY-MM-DD.pdf here"),
            ("rideaudit my-rides/2026 --rider rider-a.toml --week 2026-05-06", "the week that holds 6 May, with a rider file kept elsewhere"),
            ("rideaudit review my-rides/ --json - --no-pdf", "the review as JSON on standard output and nothing else"),
            ("rideaudit review my-rides/ --note \"Easy week next.\" --paper letter", "with the coach's note on page one, on Letter paper"));
        var folders = command.Folders();
        var review = new ReviewCommand(shell, command, folders).WithRefusals(command);
        command.Does(asked => review.Run(asked, asked.GetRequiredValue(folders)));
        return command;
    }

    /// <summary>The same, with options that contradict each other refused while the line is parsed.</summary>
    /// <param name="whose">The command whose options these are.</param>
    public ReviewCommand WithRefusals(ProgramCommand whose)
    {
        whose.Refuses(r => r.GetValue(_text) && r.GetValue(_json) == "-", "--text and --json - both want standard output: give --json a file.");
        whose.Refuses(r => r.GetValue(_noPdf) && r.GetValue(_pdf) is not null, "--pdf and --no-pdf contradict each other.");
        whose.Refuses(
            r => r.GetValue(folders) is { Length: > 1 } && new[] { r.GetValue(_pdf), r.GetValue(_json), r.GetValue(_png), r.GetValue(_pagePng) }.Any(t => t is not null),
            "--pdf, --json, --png and --page-png name one file: give one folder with them.");
        return this;
    }

    /// <summary>Nothing is to be printed.</summary>
    public bool IsQuiet(ParseResult asked) => asked.GetValue(_quiet);

    /// <summary>Reviews one folder.</summary>
    /// <param name="asked">The parsed line.</param>
    /// <param name="typed">The folder as typed.</param>
    /// <param name="prefix">Stands before the name of a PDF that has no name given.</param>
    /// <returns>The exit code, and the full path of the PDF; null without one.</returns>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public (ExitCode Code, string? Pdf) Review(ParseResult asked, string typed, string prefix = "")
    {
        var folder = RiderFolder.Open(shell, typed, asked.GetValue(_rider));
        var note = folder.Note(asked.GetValue(_note));
        var targets = Targets(asked, folder.Path, prefix, [.. new[] { folder.RiderFile, note.File }.OfType<string>()]);
        var request = folder.Request(asked.GetValue(_asOf), asked.GetValue(_week)) with { Note = note.Text };
        using var phases = new PhaseTimes(asked.GetValue(_timings));
        var content = folder.Read(asked.GetValue(_quiet));
        phases.End("reading");
        var (document, traces) = ReviewBuilder.ReviewWithTraces(content, folder.Rider, request) ?? throw folder.NoRide(content);
        phases.End("judging");
        var written = new List<OutputFile>();
        foreach (var (place, write) in targets)
        {
            var file = place(document.Week.StartsOn);
            file.Write(s => write(s, document, traces), shell.Cancel);
            written.Add(file);
        }
        phases.End("writing");
        if (asked.GetValue(_timings))
            foreach (var line in phases.Lines)
                shell.Tell(line);
        Print(asked, document, written);
        return (CodeOf(asked, document), asked.GetValue(_noPdf) ? null : written[0].Path);
    }

    /// <summary>The pass over a folder of riders that the same options ask for.</summary>
    /// <param name="asked">The parsed line.</param>
    /// <param name="output">The folder written into, as typed; null: named by the date.</param>
    /// <exception cref="UserError">Something was asked for that is one rider's.</exception>
    public RosterRun Roster(ParseResult asked, string? output)
    {
        string?[] oneRiders = [asked.GetValue(_rider), asked.GetValue(_pdf), asked.GetValue(_json), asked.GetValue(_png), asked.GetValue(_pagePng), asked.GetValue(_note)];
        if (oneRiders.Any(given => given is not null) || asked.GetValue(_text) || asked.GetValue(_noPdf))
            throw new UserError("That is a folder of riders: it takes --out, --as-of, --week, --paper, --strict and --quiet; the other options are for one rider.");
        return new RosterRun(shell)
        {
            AsOf = asked.GetValue(_asOf),
            Week = asked.GetValue(_week),
            Paper = asked.GetValue(_paper),
            Out = output,
            Quiet = asked.GetValue(_quiet),
            Strict = asked.GetValue(_strict),
        };
    }

    /// <summary>Where everything goes that was asked for, looked at before anything is read.</summary>
    /// <param name="asked">The parsed line.</param>
    /// <param name="folder">The folder that is read, full path.</param>
    /// <param name="prefix">Stands before the name of a PDF that has no name given.</param>
    /// <param name="inputs">Other files that are read, full paths.</param>
    /// <exception cref="UserError">Something cannot be written, or would be lost.</exception>
    public IReadOnlyList<(Func<LocalDate, OutputFile> Place, Action<Stream, ReviewDocument, ReviewTraces> Write)> Targets(
        ParseResult asked, string folder, string prefix = "", params IReadOnlyList<string> inputs)
    {
        var targets = new List<(Func<LocalDate, OutputFile> Place, Action<Stream, ReviewDocument, ReviewTraces> Write)>();
        var named = new List<OutputFile>();
        var options = new PageOptions { Paper = asked.GetValue(_paper), RoomForNotes = asked.GetValue(_room), Appendix = asked.GetValue(_appendix) };
        if (asked.GetValue(_pdf) is null && !asked.GetValue(_noPdf))
            targets.Add((OutputPlace.Beside(shell, folder, week => $"{prefix}review-{Shown.Iso(week)}.pdf"), Pdf));
        Add(asked.GetValue(_pdf), OutputKind.Pdf, Pdf);
        Add(asked.GetValue(_png), OutputKind.Png, (s, d, _) => Drawing.WriteCard(s, d));
        Add(asked.GetValue(_pagePng), OutputKind.Png, (s, d, _) => Drawing.WritePageOne(s, d, options));
        Add(asked.GetValue(_json) is "-" ? null : asked.GetValue(_json), OutputKind.Json, (s, d, _) => s.Write(Encoding.UTF8.GetBytes(ReviewJson.Write(d))));
        return targets;

        void Pdf(Stream stream, ReviewDocument document, ReviewTraces traces) => Drawing.WritePdf(stream, document, traces, options);

        void Add(string? typed, OutputKind kind, Action<Stream, ReviewDocument, ReviewTraces> write)
        {
            if (typed is null)
                return;
            var file = OutputFile.Named(shell, typed, kind, folder, inputs);
            if (named.Any(n => n.IsSameAs(file)))
                throw new UserError($"{typed} is asked for twice: give each file a name of its own.");
            named.Add(file);
            targets.Add((_ => file, write));
        }
    }

    private ExitCode Run(ParseResult asked, string[] typed)
    {
        var worst = ExitCode.Done;
        for (var i = 0; i < typed.Length; i++)
        {
            var (code, pdf) = typed.Length == 1 ? Review(asked, typed[i]) : OneOfSeveral(asked, typed, i);
            if (shell.OwnsWindow && pdf is not null)
                shell.OpenFile(pdf);
            if (Array.IndexOf(Worse, code) > Array.IndexOf(Worse, worst))
                worst = code;
        }
        return worst;
    }

    // Whatever is wrong with one folder stays with it.
    private (ExitCode Code, string? Pdf) OneOfSeveral(ParseResult asked, string[] typed, int which)
    {
        var names = typed.Select(t => Path.GetFileName(Path.TrimEndingDirectorySeparator(shell.FullPath(t)))).ToArray();
        var same = names[..which].Count(n => n.Equals(names[which], StringComparison.OrdinalIgnoreCase));
        if (which > 0 && !asked.GetValue(_quiet))
            shell.Out.Write('\n');
        try
        {
            return Review(asked, typed[which], same > 0 ? $"{names[which]}-{Shown.Number(same + 1)}-" : $"{names[which]}-");
        }
        catch (UserError error)
        {
            shell.TellError(error.Message);
            return (error.Code, null);
        }
    }

    private void Print(ParseResult asked, ReviewDocument document, List<OutputFile> written)
    {
        if (asked.GetValue(_json) is "-")
            shell.Out.Write(ReviewJson.Write(document));
        else if (asked.GetValue(_text))
            PlainReview.Write(new Page(shell, PlainReview.Measure), document);
        else if (!asked.GetValue(_quiet))
            Summary.Write(new Page(shell, PageMeasure), document, [.. written.Select(f => f.Shown)]);
    }

    private ExitCode CodeOf(ParseResult asked, ReviewDocument document)
    {
        var unusable = document.Notices.Where(n => n.Unusable).ToList();
        if (asked.GetValue(_strict) && unusable.Count > 0)
        {
            // An exit code of 4 without a word would leave its reader guessing.
            if (asked.GetValue(_quiet) || asked.GetValue(_json) is "-")
                unusable.ForEach(n => shell.Tell(n.File is { } file ? $"{file}: {n.Sentence}" : n.Sentence));
            return ExitCode.FilesNotUsed;
        }
        return asked.GetValue(_failOn) is not null && document.Summary.Broken > 0 ? ExitCode.RuleBroken : ExitCode.Done;
    }
}
