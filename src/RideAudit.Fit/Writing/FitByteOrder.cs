namespace RideAudit.Fit.Writing;

/// <summary>Byte order of the numbers in a message.</summary>
public enum FitByteOrder
{
    /// <summary>Least significant byte first; what most devices write.</summary>
    LittleEndian,

    /// <summary>Most significant byte first.</summary>
    BigEndian,
}
