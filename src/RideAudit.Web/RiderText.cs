using System.Collections.Immutable;
using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Web;

/// <summary>A rider file as text and as what it says.</summary>
/// <param name="Text">The text; empty without a file.</param>
/// <param name="Rider">The rider; null when the file has mistakes.</param>
internal sealed record RiderText(string Text, Plan.Rider? Rider, ImmutableArray<RiderFileMistake> Mistakes)
{
    /// <summary>No file: the defaults.</summary>
    public static RiderText None { get; } = new("", new Plan.Rider(), []);

    /// <summary>There is no file.</summary>
    public bool IsNone => Text.Length == 0;

    /// <summary>Reads a text.</summary>
    public static RiderText Of(string text)
    {
        var result = RiderFileReader.Read(text, "rider.toml", RuleBook.Standard.Ids);
        return new RiderText(text, result.Rider, result.Mistakes);
    }

    /// <summary>Each mistake in a sentence.</summary>
    public IEnumerable<string> MistakesInWords() => Mistakes.Select(m =>
        $"rider.toml, line {m.Line}: found {m.Found}; allowed: {m.Allowed}.{(m.Nearest is { } nearest ? $" Did you mean '{nearest}'?" : "")}");
}
