using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace RideAudit.Fit.Protocol;

/// <summary>The same CRC by carry-less multiplication, where the processor has it; <see cref="FitCrc"/> is the plain form it must equal.</summary>
/// <remarks>
/// Four 16-byte lanes are folded forward by 512 bits a step, then into one lane, whose CRC the plain tables take.
/// Folding by d bits multiplies the earlier eight bytes by x^(d+64) and the later eight by x^d, modulo the polynomial;
/// the product of two reflected numbers comes out one bit low, hence the exponents one smaller.
/// Source: Gopal et al. 2009, "Fast CRC computation for generic polynomials using PCLMULQDQ" (from memory; constants derived here).
/// </remarks>
internal static class CarrylessCrc
{
    public const int WorthwhileLength = 256;

    private const int LaneBytes = 16;
    private const int BlockBytes = 4 * LaneBytes;
    private static readonly Vector128<ulong> FoldBlock = FoldBy(BlockBytes * 8);
    private static readonly Vector128<ulong> FoldLane = FoldBy(LaneBytes * 8);

    public static bool IsSupported => Pclmulqdq.IsSupported && BitConverter.IsLittleEndian;

    public static ushort Append(ushort crc, ReadOnlySpan<byte> bytes)
    {
        var lanes = MemoryMarshal.Cast<byte, Vector128<ulong>>(bytes);
        Vector128<ulong> a = lanes[0] ^ Vector128.CreateScalar((ulong)crc), b = lanes[1], c = lanes[2], d = lanes[3];
        var i = 4;
        for (; i + 4 <= lanes.Length; i += 4)
        {
            a = Fold(a, FoldBlock) ^ lanes[i];
            b = Fold(b, FoldBlock) ^ lanes[i + 1];
            c = Fold(c, FoldBlock) ^ lanes[i + 2];
            d = Fold(d, FoldBlock) ^ lanes[i + 3];
        }

        b ^= Fold(a, FoldLane);
        c ^= Fold(b, FoldLane);
        d ^= Fold(c, FoldLane);
        Span<Vector128<ulong>> last = [d];
        var folded = FitCrc.AppendByTables(0, MemoryMarshal.AsBytes(last));
        return FitCrc.AppendByTables(folded, bytes[(i * LaneBytes)..]);
    }

    private static Vector128<ulong> Fold(Vector128<ulong> lane, Vector128<ulong> by) =>
        Pclmulqdq.CarrylessMultiply(lane, by, 0x00) ^ Pclmulqdq.CarrylessMultiply(lane, by, 0x11);

    private static Vector128<ulong> FoldBy(int bits) => Vector128.Create(ReflectedPower(bits + 63), ReflectedPower(bits - 1));

    private static ulong ReflectedPower(int exponent)
    {
        const int degree = 16;
        const uint polynomial = 0x1_8005;
        uint remainder = 1;
        for (var i = 0; i < exponent; i++)
        {
            remainder <<= 1;
            if ((remainder >> degree) != 0)
                remainder ^= polynomial;
        }

        ulong reflected = 0;
        for (; remainder != 0; remainder &= remainder - 1)
            reflected |= 1UL << (63 - BitOperations.TrailingZeroCount(remainder));
        return reflected;
    }
}
