using RideAudit.Formatting;

namespace RideAudit.Held;

/// <summary>What became of a planned session. Several may hold.</summary>
public enum HeldOutcome
{
    /// <summary>Ridden as planned.</summary>
    Done,

    /// <summary>Ridden on another day of the week.</summary>
    Moved,

    /// <summary>Ridden, and shorter by more than a fifth and ten minutes.</summary>
    Shorter,

    /// <summary>Ridden, and longer by more than a fifth and ten minutes.</summary>
    Longer,

    /// <summary>Ridden, and harder than meant.</summary>
    Harder,

    /// <summary>Ridden, and easier than meant.</summary>
    Easier,

    /// <summary>Not ridden.</summary>
    Missed,

    /// <summary>A ride that nobody planned.</summary>
    Added,

    /// <summary>A planned rest day with a hard ride, or with more than an hour of riding.</summary>
    [Word("rest_ridden")]
    RestRidden,
}
