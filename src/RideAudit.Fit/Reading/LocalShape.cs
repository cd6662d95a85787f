namespace RideAudit.Fit.Reading;

/// <summary>All that walking needs of a local type: the size of its data messages, -1 if undefined, and where their time is.</summary>
internal readonly record struct LocalShape(int Size, int TimeOffset, bool BigEndian)
{
    public static LocalShape Undefined => new(-1, -1, false);
}
