using System.Globalization;
using System.Text;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Cli.Terminal;

/// <summary>The marks beside the words, with or without Unicode.</summary>
/// <param name="unicode">Marks outside ASCII may be shown.</param>
internal sealed class Marks(bool unicode)
{
    private const string Steps = "▁▂▃▄▅▆▇█";

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

    /// <summary>A day's bar of one character: a dot for rest, else how much of the most it is.</summary>
    /// <param name="share">0 for rest, to 1 for the most; null where it is not known.</param>
    public string Bar(double? share) => (share, unicode) switch
    {
        (null, _) => "?",
        ( <= 0, true) => "·",
        ( <= 0, false) => ".",
        (_, true) => Steps[Math.Clamp((int)Math.Ceiling(share.Value * Steps.Length), 1, Steps.Length) - 1].ToString(),
        _ => Math.Clamp((int)Math.Ceiling(share.Value * 9), 1, 9).ToString(CultureInfo.InvariantCulture),
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
