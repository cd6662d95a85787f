using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace RideAudit.Report.Fonts;

/// <summary>One font: its outlines for drawing and its tables for shaping.</summary>
internal sealed class Face
{
    private readonly SKFont probe;
    private readonly byte[] bytes;
    private readonly int index;

    // The font reads its tables from these for as long as it lives.
    private readonly object[] kept;

    private Face(byte[] bytes, int index, SKTypeface typeface, Font shaping, object[] kept)
    {
        this.bytes = bytes;
        this.index = index;
        this.kept = kept;
        Typeface = typeface;
        Shaping = shaping;
        probe = new SKFont(typeface);
    }

    /// <summary>For drawing.</summary>
    public SKTypeface Typeface { get; }

    /// <summary>For shaping, scaled to <see cref="SKTypeface.UnitsPerEm"/>.</summary>
    public Font Shaping { get; }

    /// <summary>The font's tables.</summary>
    public Sfnt Tables => new(bytes, index);

    /// <summary>Null when the bytes are not a font.</summary>
    public static Face? Open(byte[] bytes, int index = 0)
    {
        using SKData data = SKData.CreateCopy(bytes);
        SKTypeface? typeface = SKTypeface.FromData(data, index);
        if (typeface is null)
            return null;
        byte[] pinned = GC.AllocateUninitializedArray<byte>(bytes.Length, pinned: true);
        bytes.CopyTo(pinned, 0);
        var blob = new Blob(Marshal.UnsafeAddrOfPinnedArrayElement(pinned, 0), pinned.Length, MemoryMode.ReadOnly);
        var face = new HarfBuzzSharp.Face(blob, index);
        var font = new Font(face);
        font.SetScale(typeface.UnitsPerEm, typeface.UnitsPerEm);
        font.SetFunctionsOpenType();
        return new Face(pinned, index, typeface, font, [blob, face]);
    }

    /// <summary>The font once more, for a user that disposes of what it is given.</summary>
    public SKTypeface NewTypeface()
    {
        using SKData data = SKData.CreateCopy(bytes);
        return SKTypeface.FromData(data, index)!;
    }

    /// <summary>Whether the font draws every character of a text element.</summary>
    public bool Draws(string element)
    {
        foreach (System.Text.Rune rune in element.EnumerateRunes())
        {
            if (!IsInvisible(rune) && probe.GetGlyph(rune.Value) == 0)
                return false;
        }

        return true;
    }

    private static bool IsInvisible(System.Text.Rune rune) => rune.Value is 0x200D or (>= 0xFE00 and <= 0xFE0F);
}
