namespace RideAudit.Next;

/// <summary>How good a layout is; the smallest is best. The rules come first, then the hard days kept, then taste.</summary>
/// <param name="Broken">Rules it would break.</param>
/// <param name="Watch">Rules it would bring to watch.</param>
/// <param name="HardDaysLeftOut">Smaller keeps more hard days.</param>
/// <param name="Taste">Smaller fits the rider's habits and spaces the week better.</param>
internal readonly record struct NextWeekScore(int Broken, int Watch, int HardDaysLeftOut, double Taste) : IComparable<NextWeekScore>
{
    public int CompareTo(NextWeekScore other) =>
        (Broken, Watch, HardDaysLeftOut, Taste).CompareTo((other.Broken, other.Watch, other.HardDaysLeftOut, other.Taste));
}
