namespace RideAudit.Fit.Messages;

/// <summary>What a file is (message 0). The serial number is never read.</summary>
/// <param name="Type">What the file holds; any number, also one that has no name here.</param>
/// <param name="Manufacturer">Manufacturer's number; null if absent.</param>
/// <param name="Product">Product number of that manufacturer; null if absent.</param>
/// <param name="TimeCreated">When the file was made, FIT seconds; null if absent. Often days after the ride: never its start.</param>
public sealed record FitFileId(FitFileType Type, ushort? Manufacturer = null, ushort? Product = null, uint? TimeCreated = null);
