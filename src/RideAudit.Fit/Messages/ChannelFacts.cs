namespace RideAudit.Fit.Messages;

/// <summary>How a channel is filled: a value, a zero, a declared field without a value, and no field at all are four things.</summary>
/// <param name="Values">Records with a value, zeros included.</param>
/// <param name="Zeros">Records whose value is exactly 0.</param>
/// <param name="Invalid">Records that declare the field and hold no valid value.</param>
/// <param name="Absent">Records that do not declare the field.</param>
public readonly record struct ChannelFacts(int Values, int Zeros, int Invalid, int Absent)
{
    /// <summary>True if there are values and every one is 0: a device without a sensor that writes 0.</summary>
    public bool IsAllZero => Values > 0 && Zeros == Values;
}
