namespace RideAudit.Fit;

/// <summary>One thing that is wrong in a file, and what was done about it.</summary>
/// <param name="ByteOffset">Where, in bytes from the start of the (inflated) file.</param>
/// <param name="Code">What is wrong; one a kind of damage, so that callers can tell them apart.</param>
/// <param name="Action">What was done about it, from nothing to giving up.</param>
/// <param name="Detail">One plain sentence with the numbers of this case; never a position, serial number or name.</param>
public readonly record struct FitFault(long ByteOffset, FitFaultCode Code, FitFaultAction Action, string Detail);
