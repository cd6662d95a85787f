using Spectre.Console;
using Spectre.Console.Rendering;

namespace RideAudit.Cli.Terminal;

/// <summary>One finished line: it is written as it stands, never wrapped again.</summary>
internal sealed class StyledLine(IReadOnlyList<Piece> pieces) : IRenderable
{
    // The palette of the printed page, in the nearest of the 256 terminal colours that reads on light and on dark.
    private static readonly Style Rust = new(Color.FromInt32(166), decoration: Decoration.Bold);
    private static readonly Style Ochre = new(Color.FromInt32(136));
    private static readonly Style Pale = new(Color.FromInt32(109));
    private static readonly Style Teal = new(Color.FromInt32(66));
    private static readonly Style Deep = new(Color.FromInt32(30));
    private static readonly Style Bold = new(decoration: Decoration.Bold);
    private static readonly Style Dim = new(decoration: Decoration.Dim);

    /// <inheritdoc/>
    public Measurement Measure(RenderOptions options, int maxWidth) => new(0, maxWidth);

    /// <inheritdoc/>
    public IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
    {
        foreach (var piece in pieces)
            yield return new Segment(piece.Text, StyleOf(piece.Tone));
        yield return Segment.LineBreak;
    }

    private static Style StyleOf(Tone tone) => tone switch
    {
        Tone.Strong => Bold,
        Tone.Quiet => Dim,
        Tone.Broken => Rust,
        Tone.Watch => Ochre,
        Tone.LowBand => Pale,
        Tone.MiddleBand => Teal,
        Tone.HighBand => Deep,
        _ => Style.Plain,
    };
}
