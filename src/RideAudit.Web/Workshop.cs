using System.Text;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using RideAudit.Document;
using RideAudit.Document.Layouts;
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
    private readonly PlanSheets _plan;
    private readonly NoteTable _notes;
    private FolderContent? _content;
    private NextDocument? _laidOut;
    private RiderText _rider;

    /// <summary>Opens a workshop without files.</summary>
    /// <param name="zone">The browser's time zone (IANA).</param>
    /// <param name="today">Today there, ISO 8601.</param>
    /// <param name="mayHoldRiderFile">False when no file to come can be a rider file.</param>
    public Workshop(string zone, string today, bool mayHoldRiderFile)
        : this(zone, today, mayHoldRiderFile ? null : new Plan.Rider(), RiderText.None, new PlanSheets(), new NoteTable())
    {
    }

    private Workshop(string zone, string today, Plan.Rider? given, RiderText rider, PlanSheets plan, NoteTable notes)
    {
        _machineZone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(zone) ?? DateTimeZone.Utc;
        _machineToday = Date(today) ?? throw new FormatException($"{today} is no date.");
        Today = today;
        _intake = new Intake(given, _machineZone) { KeepsOnlyWhatIsJudged = true };
        (_rider, _plan, _notes) = (rider, plan, notes);
    }

    /// <summary>Today, ISO 8601.</summary>
    public string Today { get; }

    /// <summary>True when a rider file came with the files or from the form.</summary>
    public bool HasRiderFile => !_rider.IsNone;

    /// <summary>A workshop for the same files read again, which keeps what was edited here.</summary>
    /// <param name="rider">False where a rider file is among the files that are new.</param>
    /// <param name="plan">False where a plan table is.</param>
    /// <param name="notes">False where a note is.</param>
    public Workshop Again(bool rider, bool plan, bool notes)
    {
        var kept = rider ? _rider : RiderText.None;
        return new Workshop(_machineZone.Id, Today, kept.IsNone ? null : kept.Rider, kept, plan ? _plan : new PlanSheets(), notes ? _notes : new NoteTable());
    }

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
        _plan.Take(_content);
        _notes.Take(_content);
        Forget();
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

    /// <summary>The card for a phone as an SVG text, behind it the style rules that bring its fonts; empty without a review.</summary>
    public string[] Card(string asOf, string week) =>
        Review(asOf, week) is { } review && ReviewSvg.Card(review) is var drawn ? [.. drawn.Pages, drawn.FontFaces] : [];

    /// <summary>Every week.</summary>
    public string WeeksJson(string asOf) =>
        Content() is { } folder && _rider.Rider is { } valid ? Document.Json.ReviewJson.Write(ReviewBuilder.Weeks(folder, valid, Request(asOf))) : "";

    /// <summary>Every ride.</summary>
    public string RidesJson(string asOf) =>
        Content() is { } folder && _rider.Rider is { } valid ? Document.Json.ReviewJson.Write(ReviewBuilder.Rides(folder, valid, Request(asOf))) : "";

    /// <summary>The rider as the form shows it.</summary>
    public string RiderJson() => RiderForm.Write(_rider, FirstRide(), _content?.Notices ?? []);

    /// <summary>Changes the rider file by the form's answers.</summary>
    public string Edit(string answers)
    {
        _rider = RiderText.Of(RiderFileEditor.Apply(RiderFileText(), RiderForm.Read(answers), FirstRide()));
        Forget();
        return RiderJson();
    }

    /// <summary>The rider file; a commented new one where there is none.</summary>
    public string RiderFileText() =>
        _rider.IsNone ? RiderFileTemplate.Write(new RiderFileAnswers { ThresholdFrom = FirstRide() }) : _rider.Text;

    /// <summary>The coach's notes as JSON.</summary>
    public string NotesJson() => _notes.Json();

    /// <summary>Takes the coach's notes as the page has them.</summary>
    public void SetNotes(string rows)
    {
        _notes.Set(rows);
        Forget();
    }

    /// <summary>The plan tables' rows and the weeks to come as JSON; empty without a review to come after.</summary>
    public string PlanJson(string asOf) => Review(asOf, "") is { } review ? WeeksAhead.Table(_plan, review.Week.StartsOn.PlusDays(7)) : "";

    /// <summary>Changes a row of a plan table.</summary>
    public void ChangePlan(string change)
    {
        _plan.Change(JsonSerializer.Deserialize(change, PageJson.Default.RowChange)!);
        Forget();
    }

    /// <summary>A plan table as its file.</summary>
    /// <param name="table">Its name; empty for the one that rows are added to.</param>
    public byte[] PlanTable(string table) => Encoding.UTF8.GetBytes(_plan.Text(table));

    /// <summary>What the rules say of so many planned weeks to come, as the terminal program's <c>check</c>; empty with a broken rider file.</summary>
    public string CheckJson(string asOf, int weeks) => Ahead(asOf) is { } ahead ? Document.Json.ReviewJson.Write(ahead.Check(weeks)) : "";

    /// <summary>A layout of so many weeks to come, as the terminal program's <c>next</c>; empty with a broken rider file.</summary>
    public string LayOutJson(string asOf, int weeks)
    {
        _laidOut = Ahead(asOf)?.LayOut(weeks);
        return _laidOut is { } laidOut ? Document.Json.ReviewJson.Write(laidOut) : "";
    }

    /// <summary>Writes the layout made last into the plan table.</summary>
    /// <returns>What is to be said of days left alone; empty when nothing is.</returns>
    public string TakeOver()
    {
        var kept = _laidOut is { } laidOut ? _plan.TakeOver(laidOut) : [];
        Forget();
        return WeeksAhead.Kept(kept);
    }

    /// <summary>Files that could not be used, each with its reason; mistakes of the rider file first.</summary>
    public string[] Unusable() =>
        [.. _rider.MistakesInWords(), .. _refused, .. Content()?.Notices.Where(n => n.Unusable).Select(n => $"{n.File}: {n.Sentence}") ?? []];

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

    private FolderContent? Content() => _content is not { } read ? null
        : _notes.In(_plan.In(read)) is var edited && _rider.IsNone ? edited with { Notices = [NoRiderFile(), .. edited.Notices] } : edited;

    private WeeksAhead? Ahead(string asOf) =>
        Content() is { } folder && _rider.Rider is { } valid ? new WeeksAhead(folder, valid, Request(asOf)) : null;

    private void Forget()
    {
        _reviews.Clear();
        _laidOut = null;
    }

    private ReviewRequest Request(string asOf) => new() { Today = _machineToday, AsOf = Date(asOf), Kept = _figures };

    private LocalDate FirstRide() => _content is { Recordings: [var first, ..] } ? first.StartsAt.Date : _machineToday;

    private static FileNotice NoRiderFile() => new(
        RiderFile, "assumption", null,
        "There was no rider.toml among the files: defaults are used, and threshold power is taken from the recordings or estimated. Answer the questions about the rider to change that.",
        Unusable: false);

    private static LocalDate? Date(string text) => LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var date } ? date : null;
}
