using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using RideAudit.Ingest;
using RideAudit.Report;

namespace RideAudit.Web;

/// <summary>What the page's worker calls. Texts go over as strings, documents as the JSON the terminal program writes.</summary>
[SupportedOSPlatform("browser")]
internal static partial class Bridge
{
    private static Workshop _workshop = new("UTC", "2026-01-01", false);
    private static Desk _desk = new();

    /// <summary>Goes once through reading and judging with a ride of its own.</summary>
    [JSExport]
    internal static void Prepare() => WarmUp.Run();

    /// <summary>Forgets everything and begins a rider.</summary>
    /// <param name="zone">The browser's time zone (IANA).</param>
    /// <param name="today">Today, ISO 8601.</param>
    /// <param name="mayHoldRiderFile">False when no file to come can be a rider file: nothing is kept to be read again then.</param>
    [JSExport]
    internal static void Open(string zone, string today, bool mayHoldRiderFile) => _workshop = new Workshop(zone, today, mayHoldRiderFile);

    /// <summary>Begins to read the same rider's files again, with what was edited on the page.</summary>
    /// <param name="rider">False where a rider file is among the files that are new.</param>
    /// <param name="plan">False where a plan table is.</param>
    /// <param name="notes">False where a note is.</param>
    [JSExport]
    internal static void OpenAgain(bool rider, bool plan, bool notes) => _workshop = _workshop.Again(rider, plan, notes);

    /// <summary>True for a plan table, whatever its name.</summary>
    [JSExport]
    internal static bool IsPlan(byte[] bytes) => PlanFile.Read(bytes, FolderFiles.Plan) is not null;

    /// <summary>Reads one file.</summary>
    [JSExport]
    internal static void Add(string name, byte[] bytes) => _workshop.Add(name, bytes);

    /// <summary>Says that all files added so far are to be looked at.</summary>
    [JSExport]
    internal static void Gather() => _workshop.Gather();

    /// <summary>The review of a week as JSON; empty without a usable ride.</summary>
    /// <param name="asOf">The date to look back from; empty for today.</param>
    /// <param name="week">Any day of the week; empty for the last finished one.</param>
    [JSExport]
    internal static string Review(string asOf, string week) => _workshop.ReviewJson(asOf, week);

    /// <summary>The review as a PDF, the same bytes as the terminal program's; empty without a review.</summary>
    /// <param name="asOf">The date to look back from; empty for today.</param>
    /// <param name="week">Any day of the week; empty for the last finished one.</param>
    /// <param name="letter">Letter paper in place of A4.</param>
    [JSExport]
    internal static byte[] Pdf(string asOf, string week, bool letter) => _workshop.Pdf(asOf, week, letter);

    /// <summary>The review's pages as SVG texts, and last the style rules that bring their fonts.</summary>
    [JSExport]
    internal static string[] Pages(string asOf, string week) => _workshop.Pages(asOf, week);

    /// <summary>The card for a phone as an SVG text, and the style rules that bring its fonts.</summary>
    [JSExport]
    internal static string[] Card(string asOf, string week) => _workshop.Card(asOf, week);

    /// <summary>Every week as JSON.</summary>
    [JSExport]
    internal static string Weeks(string asOf) => _workshop.WeeksJson(asOf);

    /// <summary>Every ride as JSON.</summary>
    [JSExport]
    internal static string Rides(string asOf) => _workshop.RidesJson(asOf);

    /// <summary>What the rider file says, as the form shows it, as JSON.</summary>
    [JSExport]
    internal static string Rider() => _workshop.RiderJson();

    /// <summary>Changes the rider file by the form's answers.</summary>
    /// <param name="answers">The answers as JSON.</param>
    /// <returns>The rider after it, as <see cref="Rider"/>.</returns>
    [JSExport]
    internal static string Edit(string answers) => _workshop.Edit(answers);

    /// <summary>The rider file's text.</summary>
    [JSExport]
    internal static string RiderFile() => _workshop.RiderFileText();

    /// <summary>The coach's notes as JSON.</summary>
    [JSExport]
    internal static string Notes() => _workshop.NotesJson();

    /// <summary>Takes the coach's notes as the page has them.</summary>
    [JSExport]
    internal static void SetNotes(string rows) => _workshop.SetNotes(rows);

    /// <summary>The plan tables' rows and the weeks to come as JSON; empty without a review.</summary>
    [JSExport]
    internal static string Plan(string asOf) => _workshop.PlanJson(asOf);

    /// <summary>Changes a row of a plan table.</summary>
    [JSExport]
    internal static void ChangePlan(string change) => _workshop.ChangePlan(change);

    /// <summary>A plan table as its file, byte-order mark included, which a text would lose on its way over.</summary>
    /// <param name="table">Its name; empty for the one that rows are added to.</param>
    [JSExport]
    internal static byte[] PlanTable(string table) => _workshop.PlanTable(table);

    /// <summary>What the rules say of planned weeks to come, as JSON.</summary>
    [JSExport]
    internal static string Check(string asOf, int weeks) => _workshop.CheckJson(asOf, weeks);

    /// <summary>A layout of weeks to come as JSON.</summary>
    [JSExport]
    internal static string LayOut(string asOf, int weeks) => _workshop.LayOutJson(asOf, weeks);

    /// <summary>Writes the layout made last into the plan table.</summary>
    [JSExport]
    internal static string TakeOver() => _workshop.TakeOver();

    /// <summary>Files that could not be used, as lines of text.</summary>
    [JSExport]
    internal static string[] Unusable() => _workshop.Unusable();

    /// <summary>Takes a font for characters that the page's own lacks; false when the file is none.</summary>
    [JSExport]
    internal static bool AddFont(byte[] bytes) => GivenFonts.Add(bytes);

    /// <summary>Begins a desk of several riders.</summary>
    [JSExport]
    internal static void OpenDesk() => _desk = new Desk();

    /// <summary>Puts the rider read last on the desk.</summary>
    /// <param name="folder">The rider's folder.</param>
    /// <param name="asOf">The date to look back from; empty for today.</param>
    [JSExport]
    internal static void ToDesk(string folder, string asOf) => _desk.Add(folder, _workshop, asOf);

    /// <summary>The desk as JSON, those who need the coach first.</summary>
    [JSExport]
    internal static string DeskRoster(string asOf) => _desk.Json(asOf.Length > 0 ? asOf : _workshop.Today);

    /// <summary>What the page shows beside the desk's figures, as JSON.</summary>
    [JSExport]
    internal static string DeskScreen(string asOf) => _desk.ScreenJson(asOf.Length > 0 ? asOf : _workshop.Today);
}
