using System.Text;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Terminal;

/// <summary>The marks beside the words, with or without Unicode.</summary>
/// <param name="unicode">Marks outside ASCII may be shown.</param>
internal sealed class Marks(bool unicode)
{
    /// <summary>Stands for text left out.</summary>
    public string Dots => unicode ? "…" : "...";

    /// <summary>Between things of one line.</summary>
    public string Dot => unicode ? " · " : "; ";

    /// <summary>A horizontal rule's character.</summary>
    public char Rule => unicode ? '─' : '-';

    /// <summary>The two ends of a span.</summary>
    public (char Left, char Right) SpanEnds => unicode ? ('├', '┤') : ('|', '|');

    /// <summary>A bar's cell for the low, middle and high band: told apart without colour.</summary>
    public (char Low, char Middle, char High) Bands => unicode ? ('░', '▒', '█') : ('.', '=', '#');

    /// <summary>A verdict's mark.</summary>
    public string Of(Verdict verdict) => (verdict, unicode) switch
    {
        (Verdict.Broken, true) => "✗",
        (Verdict.Broken, false) => "X",
        (Verdict.Watch, _) => "!",
        (Verdict.Kept, true) => "✓",
        (Verdict.Kept, false) => "+",
        (_, true) => "–",
        _ => "-",
    };

    /// <summary>A verdict's tone.</summary>
    public static Tone ToneOf(Verdict verdict) => verdict switch
    {
        Verdict.Broken => Tone.Broken,
        Verdict.Watch => Tone.Watch,
        Verdict.NotJudged => Tone.Quiet,
        _ => Tone.Plain,
    };

    /// <summary>Text as this terminal can show it. Letters of any script stay as they are: a name must remain findable.</summary>
    public string Show(string text)
    {
        text = WithoutControls(text);
        if (unicode)
            return text;
        var shown = new StringBuilder(text.Length);
        foreach (var c in text.Replace(" · ", "; ", StringComparison.Ordinal))
            shown.Append(InAscii(c));
        return shown.ToString();
    }

    /// <summary>A no-break space keeps a figure and its unit on one line; once the lines are broken it has done its work.</summary>
    /// <param name="text">The text of one line.</param>
    public static string Spaced(string text) => text.Replace('\u00A0', ' ').Replace('\u202F', ' ');

    // A file name or a label may hold an escape sequence, or turn the reading direction of all that follows: neither must reach the terminal.
    private static string WithoutControls(string text) => PlainText.Of(text, '?', keepLines: true);

    private static string InAscii(char c) => c switch
    {
        '–' or '—' or '−' or '‑' => "-",
        '·' => ";",
        '×' => "x",
        '÷' => "/",
        '±' => "+/-",
        '≥' => ">=",
        '≤' => "<=",
        '→' => "->",
        '…' => "...",
        '’' or '‘' => "'",
        '“' or '”' => "\"",
        '°' => " deg",
        '\u2009' => " ",
        '²' => "^2",
        _ => c.ToString(),
    };
}
