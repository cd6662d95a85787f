namespace RideAudit.Formatting;

public static partial class Shown
{
    private static readonly string[] SmallNumbers =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>A whole number in a sentence: in words up to twelve, <c>no</c> for none.</summary>
    /// <param name="count">Any.</param>
    public static string InWords(int count) => count >= 0 && count < SmallNumbers.Length ? SmallNumbers[count] : Number(count);

    /// <summary>A count and its noun in a sentence: <c>one ride</c>, <c>two high days</c>, <c>no rides</c>.</summary>
    /// <param name="count">0 or more.</param>
    /// <param name="one">The noun of one.</param>
    /// <param name="many">The noun of none and of several; null: with an s.</param>
    public static string Count(int count, string one, string? many = null) =>
        InWords(count) is var number && count < SmallNumbers.Length ? $"{number} {Noun(count, one, many)}" : Tally(count, one, many);

    /// <summary>A count and its noun in figures: <c>1 file</c>, <c>3 files</c>.</summary>
    /// <param name="count">0 or more.</param>
    /// <param name="one">The noun of one.</param>
    /// <param name="many">The noun of none and of several; null: with an s.</param>
    public static string Tally(long count, string one, string? many = null) => Number(count) + Joint + Noun(count, one, many);

    /// <summary>The form that goes with a count, of a noun or a verb: <c>ride</c>, <c>rides</c>; <c>has</c>, <c>have</c>.</summary>
    /// <param name="count">0 or more.</param>
    /// <param name="one">The form of one.</param>
    /// <param name="many">The form of none and of several; null: with an s.</param>
    public static string Noun(long count, string one, string? many = null) => count == 1 ? one : many ?? one + "s";

    /// <summary>How often: <c>once</c>, <c>twice</c>, <c>three times</c>.</summary>
    /// <param name="count">0 or more.</param>
    public static string Often(int count) => count switch { 1 => "once", 2 => "twice", _ => Count(count, "time") };

    /// <summary>Things in a sentence: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    /// <param name="items">Empty gives an empty text.</param>
    public static string List(IEnumerable<string> items)
    {
        var all = items.ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    /// <summary>With a capital first letter.</summary>
    /// <param name="text">Any.</param>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>With a capital first letter and a full stop.</summary>
    /// <param name="text">With or without either.</param>
    public static string Sentence(string text) => text.Length == 0 || text[^1] is '.' or '?' or '!' ? Capital(text) : Capital(text) + ".";
}
