namespace RideAudit.Plan;

/// <summary>Why a span of days is excepted from the plan.</summary>
public enum ExceptionKind
{
    /// <summary>Planned lighter days: planned hours × 0.6, long ride not judged.</summary>
    Lighter,

    /// <summary>A race, a 200 km day, a stage event, a camp.</summary>
    Event,

    /// <summary>On holiday, at work elsewhere.</summary>
    Away,

    /// <summary>Ill: nothing asks for more riding.</summary>
    Ill,
}
