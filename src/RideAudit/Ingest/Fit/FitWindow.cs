namespace RideAudit.Ingest.Fit;

/// <summary>The clock time of one session.</summary>
/// <param name="From">First second.</param>
/// <param name="To">The second after the last: a boundary record belongs to the later session.</param>
internal readonly record struct FitWindow(long From, long To)
{
    public static FitWindow All => new(long.MinValue, long.MaxValue);

    public bool Holds(long second) => second >= From && second < To;
}
