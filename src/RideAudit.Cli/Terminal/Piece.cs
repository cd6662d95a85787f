namespace RideAudit.Cli.Terminal;

/// <summary>A run of text in one tone.</summary>
/// <param name="Text">The text, without line ends.</param>
internal readonly record struct Piece(string Text, Tone Tone = Tone.Plain)
{
    private const string Reset = "\u001b[0m";

    /// <summary>Plain text.</summary>
    public static implicit operator Piece(string text) => new(text);

    /// <summary>The text in its colour.</summary>
    /// <remarks>
    /// ECMA-48, 8.3.117 (SGR): 1 is bold, 2 faint, 0 takes everything back; 38;5;n is one of 256 colours (ITU-T T.416, 13.1.8).
    /// The colours are those of the printed page, each in the nearest that reads on light and on dark.
    /// </remarks>
    public string Coloured() => Text.Length == 0 ? "" : Tone switch
    {
        Tone.Strong => $"\u001b[1m{Text}{Reset}",
        Tone.Quiet => $"\u001b[2m{Text}{Reset}",
        Tone.Broken => $"\u001b[1;38;5;166m{Text}{Reset}",
        Tone.Watch => $"\u001b[38;5;136m{Text}{Reset}",
        Tone.LowBand => $"\u001b[38;5;109m{Text}{Reset}",
        Tone.MiddleBand => $"\u001b[38;5;66m{Text}{Reset}",
        Tone.HighBand => $"\u001b[38;5;30m{Text}{Reset}",
        _ => Text,
    };
}
