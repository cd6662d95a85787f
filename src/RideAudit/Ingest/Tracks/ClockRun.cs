namespace RideAudit.Ingest.Tracks;

/// <summary>Neighbouring rows of one clock.</summary>
/// <param name="From">Its first row.</param>
/// <param name="To">The row after its last.</param>
/// <param name="Count">Rows with a time.</param>
/// <param name="First">Time of the first such row, s.</param>
/// <param name="Last">Time of the last.</param>
/// <param name="Low">The earliest time.</param>
/// <param name="High">The latest.</param>
internal readonly record struct ClockRun(int From, int To, int Count, long First, long Last, long Low, long High)
{
    public static ClockRun At(int row, long second) => new(row, row + 1, 1, second, second, second, second);

    public ClockRun With(int row, long second) =>
        this with { To = row + 1, Count = Count + 1, Last = second, Low = Math.Min(Low, second), High = Math.Max(High, second) };

    public long DistanceTo(long second) => second < Low ? Low - second : second > High ? second - High : 0;
}
