namespace RideAudit.Fit.Messages;

/// <summary>Share of power by one leg, as a record's balance byte says it.</summary>
/// <param name="Percent">Share, 0 to 100 %.</param>
/// <param name="IsRight">True if the share is the right leg's; false if the device does not say whose it is.</param>
internal readonly record struct PedalBalance(int Percent, bool IsRight)
{
    /// <summary>Reads a balance byte: bit 7 says "right", the low seven bits are the percentage.</summary>
    /// <param name="raw">The byte as stored; 0xFF is invalid.</param>
    /// <returns>The balance; null for the invalid byte and for more than 100 %.</returns>
    public static PedalBalance? FromByte(byte raw) =>
        raw == 0xFF || (raw & 0x7F) > 100 ? null : new PedalBalance(raw & 0x7F, (raw & 0x80) != 0);
}
