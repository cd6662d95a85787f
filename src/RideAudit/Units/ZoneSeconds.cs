namespace RideAudit.Units;

/// <summary>Seconds in the seven power zones.</summary>
/// <remarks>Zone limits: 55, 75, 90, 105, 120, 150 % of threshold power, half-open (Allen and Coggan, Training and Racing with a Power Meter; from memory).</remarks>
public readonly record struct ZoneSeconds(double Z1, double Z2, double Z3, double Z4, double Z5, double Z6, double Z7)
{
    /// <summary>All seconds that have a zone.</summary>
    public double Total => Z1 + Z2 + Z3 + Z4 + Z5 + Z6 + Z7;

    /// <summary>The seven values, zone 1 first.</summary>
    public double[] ToArray() => [Z1, Z2, Z3, Z4, Z5, Z6, Z7];

    /// <summary>Adds zone by zone.</summary>
    public static ZoneSeconds operator +(ZoneSeconds a, ZoneSeconds b) =>
        new(a.Z1 + b.Z1, a.Z2 + b.Z2, a.Z3 + b.Z3, a.Z4 + b.Z4, a.Z5 + b.Z5, a.Z6 + b.Z6, a.Z7 + b.Z7);
}
