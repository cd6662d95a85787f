using System.CommandLine;
using NodaTime;
using RideAudit.Report;

namespace RideAudit.Cli.Options;

/// <summary>The options of <c>review</c>, and how they are read back.</summary>
internal sealed class ReviewOptions
{
    private readonly Argument<string> _folder = FolderArgument.Create();
    private readonly Option<string?> _rider = CommonOptions.Rider();
    private readonly Option<LocalDate?> _asOf = CommonOptions.AsOf();
    private readonly Option<LocalDate?> _week = DateOption.Create("--week", "Review the week that holds this date. Default: the last week that has ended.");
    private readonly Option<string?> _pdf = File("--pdf", "Write the PDF here. Default: review-YYYY-MM-DD.pdf (the week's first day) in the current folder.");
    private readonly Option<bool> _noPdf = new("--no-pdf") { Description = "Write no PDF." };
    private readonly Option<string?> _json = File("--json", "Write the review as JSON here; '-' is standard output, and then nothing else goes there.");
    private readonly Option<string?> _png = File("--png", "Write page one as a picture here.");
    private readonly Option<bool> _text = new("--text") { Description = "Print the whole review as plain text of at most 80 columns instead of the summary." };
    private readonly Option<Paper> _paper = ChoiceOption.Create("--paper", "The paper of the PDF. Default: a4.", ("a4", Paper.A4), ("letter", Paper.Letter));
    private readonly Option<string?> _note = new("--note")
    {
        Description = "The coach's note for page one: a text, or a file that holds it. Default: note.md in FOLDER, if there is one.",
        HelpName = "TEXT|FILE",
    };

    private readonly Option<bool> _room = new("--room-for-notes") { Description = "Leave ruled space for handwriting where there is no note." };
    private readonly Option<bool> _strict = CommonOptions.Strict();
    private readonly Option<string?> _failOn = CommonOptions.FailOn();
    private readonly Option<bool> _quiet = CommonOptions.Quiet();

    /// <summary>Adds everything to a command.</summary>
    public void AddTo(Command command)
    {
        command.Arguments.Add(_folder);
        foreach (var option in new Option[]
        {
            _rider, _asOf, _week, _pdf, _noPdf, _json, _png, _text, _paper, _note, _room, _strict, _failOn, _quiet,
        })
            command.Options.Add(option);
        command.Validators.Add(result =>
        {
            if (result.GetValue(_text) && result.GetValue(_json) == "-")
                result.AddError("--text and --json - both want standard output: give --json a file.");
            if (result.GetValue(_noPdf) && result.GetValue(_pdf) is not null)
                result.AddError("--pdf and --no-pdf contradict each other.");
        });
    }

    /// <summary>What was asked for.</summary>
    public ReviewArguments Read(ParseResult parsed) => new()
    {
        Folder = parsed.GetRequiredValue(_folder),
        Rider = parsed.GetValue(_rider),
        AsOf = parsed.GetValue(_asOf),
        Week = parsed.GetValue(_week),
        Pdf = parsed.GetValue(_pdf),
        NoPdf = parsed.GetValue(_noPdf),
        Json = parsed.GetValue(_json),
        Png = parsed.GetValue(_png),
        Text = parsed.GetValue(_text),
        Paper = parsed.GetValue(_paper),
        Note = parsed.GetValue(_note),
        RoomForNotes = parsed.GetValue(_room),
        Strict = parsed.GetValue(_strict),
        FailOnBroken = parsed.GetValue(_failOn) is not null,
        Quiet = parsed.GetValue(_quiet),
    };

    private static Option<string?> File(string name, string description) => new(name) { Description = description, HelpName = "FILE" };
}
