using System.Buffers.Binary;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Writing;

/// <summary>Puts one value into the bytes of its field.</summary>
internal static class ValueEncoder
{
    public static void Encode(FitValue value, FitBaseType type, FitByteOrder order, Span<byte> field)
    {
        if (value.Kind == FitValueKind.Bytes)
        {
            ReadOnlySpan<byte> data = (byte[])value.Data!;
            FillInvalid(type, order, field);
            data[..Math.Min(data.Length, field.Length)].CopyTo(field);
            return;
        }

        FillInvalid(type, order, field);
        if (value.Kind != FitValueKind.Missing && field.Length >= FitBaseTypes.SizeOf(type))
            Put(BitsOf(value, type), FitBaseTypes.SizeOf(type), order, field);
    }

    private static void FillInvalid(FitBaseType type, FitByteOrder order, Span<byte> field)
    {
        var size = FitBaseTypes.SizeOf(type);
        field.Fill(type == FitBaseType.String ? (byte)0 : byte.MaxValue);
        for (var at = 0; at + size <= field.Length; at += size)
            Put(FitBaseTypes.InvalidOf(type), size, order, field[at..]);
    }

    private static ulong BitsOf(FitValue value, FitBaseType type)
    {
        if (type == FitBaseType.Float32)
            return BitConverter.SingleToUInt32Bits((float)value.Real);
        if (type == FitBaseType.Float64)
            return BitConverter.DoubleToUInt64Bits(value.Real);
        (var low, var high) = RangeOf(type);
        if (value.Integer < low || value.Integer > high)
            throw new ArgumentOutOfRangeException(nameof(value), value.Integer, $"A field of type {type} holds {low} to {high}.");
        return (ulong)value.Integer;
    }

    private static (long Low, long High) RangeOf(FitBaseType type) => type switch
    {
        FitBaseType.SInt8 => (sbyte.MinValue, sbyte.MaxValue),
        FitBaseType.SInt16 => (short.MinValue, short.MaxValue),
        FitBaseType.SInt32 => (int.MinValue, int.MaxValue),
        FitBaseType.SInt64 => (long.MinValue, long.MaxValue),
        FitBaseType.UInt16 or FitBaseType.UInt16Z => (0, ushort.MaxValue),
        FitBaseType.UInt32 or FitBaseType.UInt32Z => (0, uint.MaxValue),
        FitBaseType.UInt64 or FitBaseType.UInt64Z => (0, long.MaxValue),
        _ => (0, byte.MaxValue),
    };

    private static void Put(ulong bits, int size, FitByteOrder order, Span<byte> at)
    {
        var big = order == FitByteOrder.BigEndian;
        switch (size)
        {
            case 1: at[0] = (byte)bits; break;
            case 2 when big: BinaryPrimitives.WriteUInt16BigEndian(at, (ushort)bits); break;
            case 2: BinaryPrimitives.WriteUInt16LittleEndian(at, (ushort)bits); break;
            case 4 when big: BinaryPrimitives.WriteUInt32BigEndian(at, (uint)bits); break;
            case 4: BinaryPrimitives.WriteUInt32LittleEndian(at, (uint)bits); break;
            case 8 when big: BinaryPrimitives.WriteUInt64BigEndian(at, bits); break;
            default: BinaryPrimitives.WriteUInt64LittleEndian(at, bits); break;
        }
    }
}
