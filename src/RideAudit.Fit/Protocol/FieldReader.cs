using System.Buffers.Binary;
using System.Text;

namespace RideAudit.Fit.Protocol;

/// <summary>Reads one element by the file's own type. The invalid pattern is tested before anything is converted.</summary>
internal static class FieldReader
{
    /// <summary>Reads a number; false if it is invalid, not finite, or text.</summary>
    public static bool TryReadNumber(ReadOnlySpan<byte> element, FitBaseType type, bool bigEndian, out double value)
    {
        value = double.NaN;
        var size = FitBaseTypes.SizeOf(type);
        if (element.Length < size || type == FitBaseType.String)
            return false;
        var bits = ReadBits(element, size, bigEndian);
        if (bits == FitBaseTypes.InvalidOf(type))
            return false;
        value = type switch
        {
            FitBaseType.SInt8 => (sbyte)bits,
            FitBaseType.SInt16 => (short)bits,
            FitBaseType.SInt32 => (int)bits,
            FitBaseType.SInt64 => (long)bits,
            FitBaseType.Float32 => BitConverter.UInt32BitsToSingle((uint)bits),
            FitBaseType.Float64 => BitConverter.UInt64BitsToDouble(bits),
            _ => bits,
        };
        return double.IsFinite(value);
    }

    /// <summary>Text up to the first 0 or the field's end; bad bytes become U+FFFD.</summary>
    public static string ReadText(ReadOnlySpan<byte> field)
    {
        var end = field.IndexOf((byte)0);
        return Encoding.UTF8.GetString(end < 0 ? field : field[..end]);
    }

    private static ulong ReadBits(ReadOnlySpan<byte> element, int size, bool bigEndian) => size switch
    {
        1 => element[0],
        2 => bigEndian ? BinaryPrimitives.ReadUInt16BigEndian(element) : BinaryPrimitives.ReadUInt16LittleEndian(element),
        4 => bigEndian ? BinaryPrimitives.ReadUInt32BigEndian(element) : BinaryPrimitives.ReadUInt32LittleEndian(element),
        _ => bigEndian ? BinaryPrimitives.ReadUInt64BigEndian(element) : BinaryPrimitives.ReadUInt64LittleEndian(element),
    };
}
