using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

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

    /// <summary>The coach's note of a week; empty without one.</summary>
    [JSExport]
    internal static string Note(string asOf, string week) => _workshop.NoteText(asOf, week);

    /// <summary>Writes the coach's note.</summary>
    [JSExport]
    internal static void SetNote(string text) => _workshop.SetNote(text);

    /// <summary>Files that could not be used, as lines of text.</summary>
    [JSExport]
    internal static string[] Unusable() => _workshop.Unusable();

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
}
