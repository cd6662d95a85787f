namespace RideAudit.Fit.Reading;

/// <summary>Collects faults, and knows when a strict decode has to stop.</summary>
internal sealed class FaultLog(FitDecodeOptions options)
{
    private readonly List<FitFault> faults = [];

    public int Count { get; private set; }

    public IReadOnlyList<FitFault> Listed => faults;

    public int ListedCount => faults.Count;

    public bool MustStop => Count > 0 && options.Tolerance == DamageTolerance.Strict;

    public void Add(long offset, FitFaultCode code, FitFaultAction action, string detail)
    {
        Count++;
        if (faults.Count < options.MaxListedFaults)
            faults.Add(new FitFault(offset, code, action, detail));
    }

    public FitFault[] ListedFrom(int index) => [.. faults.Skip(index)];

    /// <summary>Forgets what was added after a point, before the same bytes are read again.</summary>
    public void RewindTo(int listed, int count)
    {
        faults.RemoveRange(listed, faults.Count - listed);
        Count = count;
    }
}
