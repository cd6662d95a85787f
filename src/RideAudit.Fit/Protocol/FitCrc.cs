using System.Buffers.Binary;

namespace RideAudit.Fit.Protocol;

/// <summary>CRC-16/ARC: polynomial 0x8005 reflected, start 0, no final exclusive-or.</summary>
/// <remarks>Slicing tables: sixteen bytes a step, one table lookup a byte, no dependence between the lookups.</remarks>
internal static class FitCrc
{
    private const ushort ReflectedPolynomial = 0xA001;
    private const int Slices = 16;
    private static readonly ushort[] Tables = BuildTables();

    public static ushort Compute(ReadOnlySpan<byte> bytes) => Append(0, bytes);

    /// <summary>The CRC of what <paramref name="crc"/> covers followed by <paramref name="bytes"/>.</summary>
    public static ushort Append(ushort crc, ReadOnlySpan<byte> bytes) =>
        CarrylessCrc.IsSupported && bytes.Length >= CarrylessCrc.WorthwhileLength
            ? CarrylessCrc.Append(crc, bytes)
            : AppendByTables(crc, bytes);

    internal static ushort AppendByTables(ushort crc, ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<ushort> t = Tables;
        while (bytes.Length >= Slices && t.Length == 256 * Slices)
        {
            var low = BinaryPrimitives.ReadUInt64LittleEndian(bytes) ^ crc;
            var high = BinaryPrimitives.ReadUInt64LittleEndian(bytes[8..]);
            crc = (ushort)(
                t[(15 * 256) + (byte)low] ^ t[(14 * 256) + (byte)(low >> 8)]
                ^ t[(13 * 256) + (byte)(low >> 16)] ^ t[(12 * 256) + (byte)(low >> 24)]
                ^ t[(11 * 256) + (byte)(low >> 32)] ^ t[(10 * 256) + (byte)(low >> 40)]
                ^ t[(9 * 256) + (byte)(low >> 48)] ^ t[(8 * 256) + (byte)(low >> 56)]
                ^ t[(7 * 256) + (byte)high] ^ t[(6 * 256) + (byte)(high >> 8)]
                ^ t[(5 * 256) + (byte)(high >> 16)] ^ t[(4 * 256) + (byte)(high >> 24)]
                ^ t[(3 * 256) + (byte)(high >> 32)] ^ t[(2 * 256) + (byte)(high >> 40)]
                ^ t[256 + (byte)(high >> 48)] ^ t[(byte)(high >> 56)]);
            bytes = bytes[Slices..];
        }

        foreach (var b in bytes)
            crc = (ushort)((crc >> 8) ^ t[(byte)(crc ^ b)]);
        return crc;
    }

    private static ushort[] BuildTables()
    {
        var tables = new ushort[256 * Slices];
        for (var value = 0; value < 256; value++)
        {
            var crc = (ushort)value;
            for (var bit = 0; bit < 8; bit++)
                crc = (ushort)((crc & 1) != 0 ? (crc >> 1) ^ ReflectedPolynomial : crc >> 1);
            tables[value] = crc;
        }

        for (var i = 256; i < tables.Length; i++)
            tables[i] = (ushort)((tables[i - 256] >> 8) ^ tables[(byte)tables[i - 256]]);
        return tables;
    }
}
