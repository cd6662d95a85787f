namespace RideAudit.Cli.Terminal;

/// <summary>A run of text in one tone.</summary>
/// <param name="Text">The text, without line ends.</param>
/// <param name="Tone">Its tone.</param>
internal readonly record struct Piece(string Text, Tone Tone = Tone.Plain)
{
    /// <summary>Plain text.</summary>
    public static implicit operator Piece(string text) => new(text);
}
