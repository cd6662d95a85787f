namespace RideAudit.Fit;

/// <summary>All that was decoded from one file: its parts and everything that is wrong with it.</summary>
/// <remarks>Channels lie in lent arrays. Who decodes many files disposes of each when done with it, and its channels are then empty; who does not loses nothing but speed.</remarks>
public sealed class FitFile : IDisposable
{
    internal FitFile(IReadOnlyList<FitPart> parts, IReadOnlyList<FitFault> faults, int faultCount, FitRejection? rejection)
    {
        Parts = parts;
        Faults = faults;
        FaultCount = faultCount;
        Rejection = rejection;
    }

    /// <summary>The chained parts in file order; most files have one. Empty if <see cref="Rejection"/> is set.</summary>
    public IReadOnlyList<FitPart> Parts { get; }

    /// <summary>Gives the channels' arrays back.</summary>
    public void Dispose()
    {
        foreach (var part in Parts)
            part.Records.GiveBack();
    }

    /// <summary>Everything that is wrong, in the order found, at most <see cref="FitDecodeOptions.MaxListedFaults"/>.</summary>
    public IReadOnlyList<FitFault> Faults { get; }

    /// <summary>How many faults there are, listed or not.</summary>
    public int FaultCount { get; }

    /// <summary>Why nothing could be used; null if something could.</summary>
    public FitRejection? Rejection { get; }

    /// <summary>True if at least one part was read.</summary>
    public bool IsUsable => Rejection is null;

    /// <summary>True if something is missing from the file: at least one fault was answered by salvage or rejection.</summary>
    public bool IsRecovered => Faults.Any(f => f.Action is FitFaultAction.Salvage or FitFaultAction.Reject);
}
