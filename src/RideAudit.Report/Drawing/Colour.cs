namespace RideAudit.Report.Drawing;

/// <summary>An opaque colour, sRGB, 0 to 255 each.</summary>
internal readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>This colour laid over white paper so thinly.</summary>
    /// <param name="strength">0 (paper) to 1 (the colour itself).</param>
    public Colour Tint(double strength)
    {
        byte Mix(byte to) => (byte)(255 + ((to - 255) * strength));
        return new Colour(Mix(Red), Mix(Green), Mix(Blue));
    }
}
