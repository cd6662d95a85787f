using RideAudit.Formatting;

namespace RideAudit.Figures;

/// <summary>Which channel a ride's kind and bands came from.</summary>
public enum MeasureSource
{
    /// <summary>None: the ride is unrated.</summary>
    [Word(null)]
    None,

    /// <summary>Power.</summary>
    Power,

    /// <summary>Heart rate against threshold heart rate.</summary>
    HeartRate,
}
