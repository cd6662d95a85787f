
namespace RideAudit.Report.Drawing;

/// <summary>How a line looks: butt ends, joins rounded where asked for.</summary>
/// <param name="Width">Width, pt.</param>
/// <param name="Dash">Length of a dash, pt; 0 for a line without gaps.</param>
internal readonly record struct Pen(Colour Colour, float Width, float Dash = 0)
{
    /// <summary>Length of a gap between dashes, pt; as long as a dash unless said otherwise.</summary>
    public float Gap { get; init; } = Dash;

    /// <summary>Corners of the line are rounded.</summary>
    public bool Rounded { get; init; }
}
