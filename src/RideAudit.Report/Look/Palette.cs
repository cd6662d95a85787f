using RideAudit.Report.Drawing;

namespace RideAudit.Report.Look;

/// <summary>The colours of the pages: one hue light to dark for the bands, rust for findings, ink, and quiet greys.</summary>
internal static class Palette
{
    /// <summary>Text and strong lines.</summary>
    public static readonly Colour Ink = new(0x1E, 0x24, 0x22);

    /// <summary>Secondary text.</summary>
    public static readonly Colour Quiet = new(0x5C, 0x66, 0x63);

    /// <summary>Findings.</summary>
    public static readonly Colour Rust = new(0xA8, 0x4A, 0x1C);

    /// <summary>Thin rules; never text.</summary>
    public static readonly Colour Hairline = new(0xC9, 0xCF, 0xCC);

    /// <summary>The paper.</summary>
    public static readonly Colour Paper = new(0xFF, 0xFF, 0xFF);

    /// <summary>Low band.</summary>
    public static readonly Colour Low = new(0xB9, 0xD3, 0xCF);

    /// <summary>Middle band.</summary>
    public static readonly Colour Middle = new(0x4F, 0x8F, 0x8B);

    /// <summary>High band; also marks of what was kept.</summary>
    public static readonly Colour High = new(0x14, 0x3F, 0x41);

    /// <summary>Colours that text is set in; each is at least 4.5:1 against <see cref="Paper"/>.</summary>
    public static IReadOnlyList<Colour> TextColours => [Ink, Quiet, Rust, High];
}
