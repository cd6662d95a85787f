using System.Globalization;
using System.Text;
using RideAudit.Units;

namespace RideAudit.Report.Fonts;

/// <summary>The fonts of the pages, and the one way from text to placed glyphs: Inter, and the machine's fonts for what Inter lacks.</summary>
/// <param name="system">Where to look for characters that Inter lacks.</param>
internal sealed class FontSet(SystemFonts system)
{
    private static readonly Dictionary<Weight, Face> Package = new()
    {
        [Weight.Regular] = Load("Inter-Regular.ttf"),
        [Weight.SemiBold] = Load("Inter-SemiBold.ttf"),
    };

    /// <summary>Inter, and the fonts of this machine.</summary>
    public static FontSet OfThisMachine { get; } = new(SystemFonts.OfThisMachine);

    /// <summary>Inter in a weight.</summary>
    public static Face Inter(Weight weight) => Package[weight];

    /// <summary>Sets a text without line breaks: each character from a font that has it, kerned.</summary>
    /// <param name="weight">Weight; the machine's fonts have one only.</param>
    /// <param name="size">Size, pt.</param>
    public List<GlyphRun> Shape(string text, Weight weight, float size) =>
        [.. Split(text, weight).Select(part => part.Face.Shape(part.Text, size))];

    /// <summary>Width of a text, pt.</summary>
    public float Measure(string text, Weight weight, float size) => Shape(text, weight, size).Sum(run => run.Width);

    /// <summary>Text as it can be drawn: no control characters, and the script's name in brackets where no font draws it.</summary>
    public string Printable(string text, Weight weight) => string.Concat(Split(text, weight).Select(run => run.Text));

    /// <summary>Scripts of a text that cannot be drawn, each once, in the order met.</summary>
    public IEnumerable<Writing> Lacking(IEnumerable<string> texts) =>
        texts.SelectMany(Elements).Where(element => For(Weight.Regular, element) is null).Select(Writing.Of).Distinct();

    /// <summary>A font for one text element; null when it cannot be drawn.</summary>
    public Face? For(Weight weight, string element)
    {
        if (Package[weight].Draws(element))
            return Package[weight];
        return Writing.Of(element).IsSet ? system.For(element) : null;
    }

    private List<(Face Face, string Text)> Split(string text, Weight weight)
    {
        var runs = new List<(Face Face, StringBuilder Text)>();
        Writing? lacking = null;
        foreach (var element in Elements(text))
        {
            var face = For(weight, element);
            var writing = face is null ? Writing.Of(element) : null;
            if (lacking is not null && (writing == lacking || (element == " " && runs[^1].Text[^1] == ' ')))
                continue;
            lacking = element == " " ? lacking : writing;
            (var used, var printed) = face is null ? (Package[weight], $"[{writing!.Name}]") : (face, element);
            if (runs.Count > 0 && ReferenceEquals(runs[^1].Face, used))
                runs[^1].Text.Append(printed);
            else
                runs.Add((used, new StringBuilder(printed)));
        }

        // The space between two parts of one name in brackets is none after it.
        if (lacking is not null && !text.EndsWith(' ') && runs[^1].Text is { Length: > 1 } end && end[^1] == ' ')
            end.Length--;
        return runs.ConvertAll(run => (run.Face, run.Text.ToString()));
    }

    private static IEnumerable<string> Elements(string text)
    {
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = Clean(elements.GetTextElement());
            if (element.Length > 0)
                yield return element;
        }
    }

    private static string Clean(string element) => Rune.GetUnicodeCategory(element.EnumerateRunes().First()) switch
    {
        UnicodeCategory.Control => element is "\n" or "\t" or "\r\n" ? " " : "",
        UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => " ",
        UnicodeCategory.Format or UnicodeCategory.Surrogate => "",
        _ => element,
    };

    private static Face Load(string file)
    {
        using var phase = Phase.Begin("fonts");
        return Face.Open(InterPackage.Read(file)) ?? throw new InvalidDataException($"{file} of the font package cannot be read as a font.");
    }
}
