namespace RideAudit.Fit.Tests.Hazards;

/// <summary>One small file that shows one hazard, and what must come of it. Numbers follow from how the file is made.</summary>
public sealed record HazardCase(string Row, string Name, string What, byte[] Bytes)
{
    /// <summary>True if the file is in order: no fault may be reported.</summary>
    public bool IsGood => Rejection is null && Faults.Length == 0;

    public int Parts { get; init; } = 1;

    public int Records { get; init; }

    public double PowerSum { get; init; }

    public double DeveloperPowerSum { get; init; }

    public int Sessions { get; init; } = 1;

    /// <summary>Faults in the order reported.</summary>
    public (FitFaultCode Code, FitFaultAction Action)[] Faults { get; init; } = [];

    public FitRejectionReason? Rejection { get; init; }

    /// <summary>What else must hold; a sentence that names it, and the test.</summary>
    public Action<FitFile>? Also { get; init; }

    public string Extension { get; init; } = "fit";

    public string FileName => $"{Row}-{Name}.{Extension}";

    public string Folder => IsGood ? "good" : "bad";

    public override string ToString() => FileName;
}
