using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;

namespace RideAudit.Document.Json;

/// <summary>Writes documents as JSON: snake_case, ISO 8601, unit in the name, null for missing.</summary>
public static class ReviewJson
{
    private static readonly ReviewJsonContext Context = new(new JsonSerializerOptions(ReviewJsonContext.Default.Options)
    {
        // Labels and file names of any script stay readable; the text never lands inside a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
    });

    /// <summary>A review as indented UTF-8 JSON ending in a line feed.</summary>
    public static string Write(ReviewDocument document) => Write(document, Context.ReviewDocument);

    /// <summary>Rides as JSON.</summary>
    public static string Write(RidesDocument document) => Write(document, Context.RidesDocument);

    /// <summary>Weeks as JSON.</summary>
    public static string Write(WeeksDocument document) => Write(document, Context.WeeksDocument);

    /// <summary>Rules as JSON.</summary>
    public static string Write(RulesDocument document) => Write(document, Context.RulesDocument);

    /// <summary>Weeks to come as JSON.</summary>
    public static string Write(NextDocument document) => Write(document, Context.NextDocument);

    /// <summary>A roster as JSON.</summary>
    public static string Write(RosterDocument document) => Write(document, Context.RosterDocument);

    private static string Write<T>(T document, JsonTypeInfo<T> shape) => Visible(JsonSerializer.Serialize(document, shape)) + "\n";

    // What turns the reading direction is escaped as controls are: it stands in strings alone.
    private static string Visible(string json) => json.Any(IsHidden)
        ? string.Concat(json.Select(c => IsHidden(c) ? string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}") : c.ToString()))
        : json;

    private static bool IsHidden(char c) => c != '\n' && PlainText.Harms(c);
}
