namespace RideAudit.Figures;

/// <summary>Which channel a ride's bands came from.</summary>
public enum MeasureSource
{
    /// <summary>None: the ride has no bands.</summary>
    None,

    /// <summary>Power.</summary>
    Power,

    /// <summary>Heart rate against threshold heart rate.</summary>
    HeartRate,
}
