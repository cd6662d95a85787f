using NodaTime;
using Tomlyn;
using Tomlyn.Syntax;

namespace RideAudit.Plan.Toml;

/// <summary>Reads one table key by key. Every mistake is added to the list; the reading goes on with the default.</summary>
internal sealed class TomlSection(TomlTable table, string name, List<RiderFileMistake> mistakes)
{
    /// <summary>Of a text that anybody writes into a rider file.</summary>
    private const int MostCharacters = 1000;

    private readonly List<string> _known = [];

    /// <summary>Where the table begins.</summary>
    public TomlPlace Place => table.Place;

    /// <summary>Where a key stands; the table's beginning when it is not there.</summary>
    public TomlPlace PlaceOf(string key) => table[key]?.KeyPlace ?? table.Place;

    /// <summary>Where the first letter of a key’s text stands, behind its quotation mark.</summary>
    public TomlPlace TextPlace(string key) => table[key]?.Value is { } value && TomlPlace.Of(value) is var place
        ? place with { Column = place.Column + 1 }
        : PlaceOf(key);

    public bool Has(string key) => table[key] is not null || table.BrokenKeys.Contains(key);

    /// <summary>A number within a range; null when it is not there or not right.</summary>
    public double? Number(string key, double least, double most, string unit, bool whole = false)
    {
        var allowed = $"{key}: {(whole ? "a whole number" : "a number")} from {TomlRange.Text(least)} to {TomlRange.Text(most)}{(unit.Length > 0 ? " " + unit : "")}";
        if (Value(key, allowed) is not { } value)
            return null;
        if (NumberOf(value) is { } number && number >= least && number <= most && (!whole || number == Math.Floor(number)))
            return number;
        Add(value, TomlWords.Found(value), allowed);
        return null;
    }

    /// <summary>Text that is not empty; null when it is not there or not right.</summary>
    public string? Text(string key, string allowed, bool trim = true)
    {
        if (Value(key, $"{key}: {allowed}") is not { } value)
            return null;
        if (value is StringValueSyntax { Value: { } text } && text.Trim().Length is > 0 and <= MostCharacters)
            return trim ? text.Trim() : text;
        Add(value, TomlWords.Found(value), $"{key}: {allowed}");
        return null;
    }

    /// <summary>A date; null when it is not there or not right.</summary>
    public LocalDate? Date(string key)
    {
        const string Allowed = "a date such as 2026-05-18, without quotes";
        if (Value(key, $"{key}: {Allowed}") is not { } value)
            return null;
        if (value is DateTimeValueSyntax { Value.Kind: TomlDateTimeKind.LocalDate } date)
            return LocalDate.FromDateTime(date.Value.DateTime.DateTime);
        Add(value, TomlWords.Found(value), $"{key}: {Allowed}");
        return null;
    }

    /// <summary>One of several words; null when it is not there or not right.</summary>
    public T? Choice<T>(string key, IReadOnlyList<(string Word, T Value)> choices)
        where T : struct
    {
        var allowed = $"{key}: {Words(choices)}";
        return Value(key, allowed) is { } value ? ChoiceOf(value, choices, allowed) : null;
    }

    /// <summary>A list of words, each once.</summary>
    public List<T> Choices<T>(string key, IReadOnlyList<(string Word, T Value)> choices)
        where T : struct
    {
        var allowed = $"{key}: a list of {Words(choices)}, each once";
        var chosen = new List<T>();
        foreach (var item in Items(key, allowed))
        {
            if (ChoiceOf(item, choices, allowed) is not { } choice)
                continue;
            if (chosen.Contains(choice))
                Add(item, $"{TomlWords.Found(item)} a second time", allowed);
            else
                chosen.Add(choice);
        }
        return chosen;
    }

    /// <summary>Whether a key has a list with nothing in it.</summary>
    public bool IsEmptyList(string key) => table[key]?.Value is ArraySyntax array && array.Items.ChildrenCount == 0;

    /// <summary>The values of a list.</summary>
    public List<ValueSyntax> Items(string key, string allowed)
    {
        if (Value(key, allowed) is not { } value)
            return [];
        if (value is ArraySyntax array)
            return [.. array.Items.Select(i => i.Value).OfType<ValueSyntax>()];
        Add(value, TomlWords.Found(value), allowed);
        return [];
    }

    /// <summary>A table of this one; null when it is not there.</summary>
    public TomlSection? Table(string key)
    {
        if (Node(key) is not { } node)
            return null;
        if (node.Tables.Count == 1 && !node.IsArray)
            return Inner(node.Tables[0], key);
        AddAt(node.KeyPlace, node.Found, $"one table [{FullName(key)}]");
        return null;
    }

    /// <summary>An array of tables of this one; empty when it is not there.</summary>
    public List<TomlSection> TableArray(string key)
    {
        if (Node(key) is not { } node)
            return [];
        if (node.IsArray)
            return [.. node.Tables.Select(t => Inner(t, key))];
        AddAt(node.KeyPlace, node.Found, $"tables written [[{FullName(key)}]], one an entry");
        return [];
    }

    /// <summary>Reports every key that was not asked for.</summary>
    /// <param name="allowed">What is allowed, where the known keys are too many to list.</param>
    public void RejectUnknown(string? allowed = null)
    {
        var where = name.Length == 0 ? "at the top" : $"in [{name}]";
        foreach (var key in table.Keys.Where(k => !_known.Contains(k)))
        {
            var found = $"the unknown key {TomlWords.Shortened(key)} {where}";
            AddAt(table[key]!.KeyPlace, found, allowed ?? string.Join(", ", _known), NearestName.Of(key, _known));
        }
    }

    public void AddAt(TomlPlace place, string found, string allowed, string? nearest = null) =>
        mistakes.Add(new RiderFileMistake(place.Line, place.Column, found, allowed, nearest));

    public void Add(ValueSyntax value, string found, string allowed, string? nearest = null) =>
        AddAt(TomlPlace.Of(value), found, allowed, nearest);

    public static double? NumberOf(ValueSyntax value) => value switch
    {
        IntegerValueSyntax number => number.Value,
        FloatValueSyntax number when double.IsFinite(number.Value) => number.Value,
        _ => null,
    };

    private TomlSection Inner(TomlTable inner, string key) => new(inner, FullName(key), mistakes);

    private string FullName(string key) => name.Length == 0 ? key : $"{name}.{key}";

    private TomlNode? Node(string key)
    {
        _known.Add(key);
        return table[key];
    }

    private ValueSyntax? Value(string key, string allowed)
    {
        if (Node(key) is not { } node)
            return null;
        if (node.Value is { } value)
            return value;
        AddAt(node.KeyPlace, node.Found, allowed);
        return null;
    }

    private T? ChoiceOf<T>(ValueSyntax value, IReadOnlyList<(string Word, T Value)> choices, string allowed)
        where T : struct
    {
        var text = value is StringValueSyntax { Value: { } written } ? written.Trim() : null;
        foreach (var (word, choice) in choices)
        {
            if (string.Equals(word, text, StringComparison.OrdinalIgnoreCase))
                return choice;
        }
        Add(value, TomlWords.Found(value), allowed, text is null ? null : NearestName.Of(text, choices.Select(c => c.Word)));
        return null;
    }

    /// <summary>The words of choices in a row.</summary>
    public static string Words<T>(IReadOnlyList<(string Word, T Value)> choices) =>
        string.Join(", ", choices.SkipLast(1).Select(c => c.Word)) + " or " + choices[^1].Word;
}
