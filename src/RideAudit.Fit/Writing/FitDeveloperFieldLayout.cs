using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Writing;

/// <summary>A developer field of a definition to be written. Its type is not stored in the definition but in the field's description.</summary>
/// <param name="Number">Field number, chosen by the developer.</param>
/// <param name="DeveloperIndex">Index of the developer in this file.</param>
/// <param name="Type">Base type its values are written with.</param>
/// <param name="Size">Bytes.</param>
public readonly record struct FitDeveloperFieldLayout(byte Number, byte DeveloperIndex, FitBaseType Type, byte Size);
