using RideAudit.Formatting;

namespace RideAudit.Rules.Changes;

/// <summary>What was done to one ride to keep a rule.</summary>
public enum ChangeKind
{
    /// <summary>To another day.</summary>
    Move,

    /// <summary>Its day swapped with another ride's.</summary>
    Swap,

    /// <summary>Ridden easy: same time at ratio 0.65, all low.</summary>
    Ease,

    /// <summary>Left out.</summary>
    [Word("leave_out")]
    LeaveOut,

    /// <summary>Lengthened to the long-ride length, by half of its own at most.</summary>
    Lengthen,

    /// <summary>A hard ride ridden as the long ride: its length, at ratio 0.65, all low.</summary>
    [Word("ride_long")]
    RideLong,
}
