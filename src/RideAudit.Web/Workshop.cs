using NodaTime;
using NodaTime.Text;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Web;

/// <summary>One rider's files from the first byte to the review.</summary>
internal sealed class Workshop
{
    private const string RiderFile = "rider.toml";

    private readonly DateTimeZone _machineZone;
    private readonly LocalDate _machineToday;
    private readonly Intake _intake;
    private readonly List<string> _refused = [];
    private readonly Dictionary<(string AsOf, string Week), (ReviewDocument Document, ReviewTraces Traces)?> _reviews = [];
    private readonly KeptFigures _figures = new();
    private FolderContent? _content;
    private RiderText _rider;
    private string? _note;

    /// <summary>Opens a workshop without files.</summary>
    /// <param name="zone">The browser's time zone (IANA).</param>
    /// <param name="today">Today there, ISO 8601.</param>
    /// <param name="mayHoldRiderFile">False when no file to come can be a rider file.</param>
    public Workshop(string zone, string today, bool mayHoldRiderFile)
    {
        _machineZone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone) ?? DateTimeZone.Utc;
        _machineToday = Date(today) ?? throw new FormatException($"{today} is no date.");
        Today = today;
        _intake = new Intake(mayHoldRiderFile ? null : new Plan.Rider(), _machineZone) { KeepsOnlyWhatIsJudged = true };
        _rider = RiderText.None;
    }

    /// <summary>Today, ISO 8601.</summary>
    public string Today { get; }

    /// <summary>True when a rider file came with the files or from the form.</summary>
    public bool HasRiderFile => !_rider.IsNone;

    /// <summary>Reads one file.</summary>
    public void Add(string name, byte[] bytes)
    {
        using var stream = new MemoryStream(bytes, writable: false);
        try
        {
            _intake.Add(name, stream);
        }
        catch (ArgumentException)
        {
            _refused.Add($"{name}: a second file of this name was dropped; the first is kept.");
        }
    }

    /// <summary>Looks at all files added so far.</summary>
    public void Gather()
    {
        _content = _intake.Finish();
        if (_rider.IsNone && _content.RiderFile is { } file)
            _rider = RiderText.Of(file.Text);
        _reviews.Clear();
    }

    /// <summary>The review of a week; null without a usable ride or with a broken rider file.</summary>
    public ReviewDocument? Review(string asOf, string week) => WithTraces(asOf, week)?.Document;

    /// <summary>The same as the terminal program's JSON.</summary>
    public string ReviewJson(string asOf, string week) => Review(asOf, week) is { } review ? Document.Json.ReviewJson.Write(review) : "";

    /// <summary>The review as a PDF; empty without a review.</summary>
    public byte[] Pdf(string asOf, string week, bool letter)
    {
        using var output = new MemoryStream();
        if (WithTraces(asOf, week) is var (review, traces))
            ReviewPdf.Write(review, output, new PageOptions { Paper = letter ? Paper.Letter : Paper.A4 }, traces);
        return output.ToArray();
    }

    /// <summary>The review's pages as SVG texts, behind them the style rules that bring their fonts; empty without a review.</summary>
    public string[] Pages(string asOf, string week)
    {
        if (WithTraces(asOf, week) is not var (review, traces))
            return [];
        var drawn = ReviewSvg.Draw(review, new PageOptions(), traces);
        return [.. drawn.Pages, drawn.FontFaces];
    }

    /// <summary>Every week.</summary>
    public string WeeksJson(string asOf) =>
        Content() is { } folder && _rider.Rider is { } valid ? Document.Json.ReviewJson.Write(ReviewBuilder.Weeks(folder, valid, Request(asOf))) : "";

    /// <summary>Every ride.</summary>
    public string RidesJson(string asOf) =>
        Content() is { } folder && _rider.Rider is { } valid ? Document.Json.ReviewJson.Write(ReviewBuilder.Rides(folder, valid, Request(asOf))) : "";

    /// <summary>The rider as the form shows it.</summary>
    public string RiderJson() => RiderForm.Write(_rider, FirstRide());

    /// <summary>Changes the rider file by the form's answers.</summary>
    public string Edit(string answers)
    {
        _rider = RiderText.Of(RiderFileEditor.Apply(RiderFileText(), RiderForm.Read(answers), FirstRide()));
        _reviews.Clear();
        return RiderJson();
    }

    /// <summary>The rider file; a commented new one where there is none.</summary>
    public string RiderFileText() =>
        _rider.IsNone ? RiderFileTemplate.Write(new RiderFileAnswers { ThresholdFrom = FirstRide() }) : _rider.Text;

    /// <summary>The coach's note of a week: what was written here, else the one among the files; empty without one.</summary>
    public string NoteText(string asOf, string week) => _note ?? Review(asOf, week)?.Note ?? "";

    /// <summary>Writes the coach's note, in place of those among the files.</summary>
    public void SetNote(string text)
    {
        _note = text;
        _reviews.Clear();
    }

    /// <summary>Files that could not be used, each with its reason; mistakes of the rider file first.</summary>
    public string[] Unusable() =>
        [.. _rider.MistakesInWords(), .. _refused, .. _content?.Notices.Where(n => n.Unusable).Select(n => $"{n.File}: {n.Sentence}") ?? []];

    private (ReviewDocument Document, ReviewTraces Traces)? WithTraces(string asOf, string week)
    {
        if (_reviews.TryGetValue((asOf, week), out var known))
            return known;
        var made = Content() is { } folder && _rider.Rider is { } valid
            ? ReviewBuilder.ReviewWithTraces(folder, valid, Request(asOf) with { WeekOf = Date(week) })
            : null;
        _reviews[(asOf, week)] = made;
        return made;
    }

    private FolderContent? Content() => _content is null ? null : _content with
    {
        Notices = _rider.IsNone ? [NoRiderFile(), .. _content.Notices] : _content.Notices,
        Notes = _note is null ? _content.Notes : [new NamedText(FolderFiles.Note, _note)],
    };

    private ReviewRequest Request(string asOf) => new() { Today = _machineToday, AsOf = Date(asOf), Kept = _figures };

    private LocalDate FirstRide() => _content is { Recordings: [var first, ..] } ? first.StartsAt.Date : _machineToday;

    private static FileNotice NoRiderFile() => new(
        RiderFile, "assumption", null,
        "There was no rider.toml among the files: defaults are used, and threshold power is taken from the recordings or estimated. Answer the questions about the rider to change that.",
        Unusable: false);

    private static LocalDate? Date(string text) => LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var date } ? date : null;
}
