namespace RideAudit.Plan;

/// <summary>Why a span of days is excepted from the plan.</summary>
public enum ExceptionKind
{
    /// <summary>A planned lighter week: hour limits × 0.6, long ride not judged.</summary>
    Lighter,

    /// <summary>A race, a 200 km day, a stage event.</summary>
    Event,

    /// <summary>Ill or on holiday.</summary>
    Away,
}
