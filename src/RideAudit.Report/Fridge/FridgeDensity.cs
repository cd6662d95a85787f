using System.Collections.Immutable;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Fridge;

/// <summary>How large a week is set, so that it stays on one page: large enough to be read from the kitchen table where it has room.</summary>
/// <param name="Size">Size of the text, pt.</param>
/// <param name="Air">White space above and below a row, pt.</param>
/// <param name="Picture">Least height of the week's picture, pt.</param>
internal readonly record struct FridgeDensity(float Size, float Air, float Picture)
{
    /// <summary>From the largest to the smallest.</summary>
    public static ImmutableArray<FridgeDensity> LargestFirst { get; } = [new(11.5f, 7, 170), new(10.5f, 5, 150), new(9.5f, 4, 130), new(8.5f, 2.5f, 110)];

    /// <summary>What to ride.</summary>
    public TextStyle Text => new(Weight.Regular, Size, Palette.Ink);

    /// <summary>Day, length, and the kind of a hard session.</summary>
    public TextStyle Strong => new(Weight.SemiBold, Size, Palette.Ink);

    /// <summary>Side of the box to tick, pt.</summary>
    public float Box => Size * 0.78f;
}
