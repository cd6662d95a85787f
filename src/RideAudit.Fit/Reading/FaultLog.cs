namespace RideAudit.Fit.Reading;

/// <summary>Collects faults, and knows when a strict decode has to stop.</summary>
internal sealed class FaultLog(FitDecodeOptions options)
{
    private readonly List<FitFault> _faults = [];

    public int Count { get; private set; }

    public IReadOnlyList<FitFault> Listed => _faults;

    public int ListedCount => _faults.Count;

    public bool MustStop => Count > 0 && options.Tolerance == DamageTolerance.Strict;

    public void Add(long offset, FitFaultCode code, FitFaultAction action, string detail)
    {
        Count++;
        if (_faults.Count < options.MaxListedFaults)
            _faults.Add(new FitFault(offset, code, action, detail));
    }

    public FitFault[] ListedFrom(int index) => [.. _faults.Skip(index)];

    /// <summary>Forgets what was added after a point, before the same bytes are read again.</summary>
    public void RewindTo(int listed, int count)
    {
        _faults.RemoveRange(listed, _faults.Count - listed);
        Count = count;
    }
}
