using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Writing;

/// <summary>A field of a definition to be written.</summary>
/// <param name="Number">Field number of the profile.</param>
/// <param name="Type">Base type.</param>
/// <param name="Size">Bytes; normally the base type's size, or a multiple of it for an array or text.</param>
public readonly record struct FitFieldLayout(byte Number, FitBaseType Type, byte Size)
{
    /// <summary>A field of one element.</summary>
    /// <param name="number">Field number of the profile.</param>
    /// <param name="type">Base type.</param>
    public FitFieldLayout(byte number, FitBaseType type)
        : this(number, type, (byte)FitBaseTypes.SizeOf(type))
    {
    }
}
