using System.Buffers.Binary;
using System.IO.Compression;
using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Tests.Hazards;

/// <summary>Ways to damage a file.</summary>
internal static class Bytes
{
    public static byte[] Join(params byte[][] parts) => [.. parts.SelectMany(p => p)];

    public static byte[] With(byte[] file, Action<byte[]> change)
    {
        byte[] copy = [.. file];
        change(copy);
        return copy;
    }

    /// <summary>Changes the header's data size; its own CRC and the closing one are made to agree again if asked.</summary>
    public static byte[] WithDataSize(byte[] file, uint size, bool repairCrc = false) => With(file, f =>
    {
        BinaryPrimitives.WriteUInt32LittleEndian(f.AsSpan(4), size);
        BinaryPrimitives.WriteUInt16LittleEndian(f.AsSpan(12), FitCrc.Compute(f.AsSpan(0, 12)));
        if (repairCrc)
            BinaryPrimitives.WriteUInt16LittleEndian(f.AsSpan(f.Length - 2), FitCrc.Compute(f.AsSpan(0, f.Length - 2)));
    });

    public static byte[] Gzip(byte[] bytes)
    {
        // One stored block: the same bytes from every version of a compressor.
        using MemoryStream output = new();
        using (BinaryWriter writer = new(output))
        {
            writer.Write([0x1F, 0x8B, 8, 0, 0, 0, 0, 0, 0, 255, 1]);
            writer.Write((ushort)bytes.Length);
            writer.Write((ushort)~bytes.Length);
            writer.Write(bytes);
            writer.Write(Crc32(bytes));
            writer.Write(bytes.Length);
        }

        return output.ToArray();
    }

    public static byte[] Zip()
    {
        using MemoryStream output = new();
        using (ZipArchive zip = new(output, ZipArchiveMode.Create))
            zip.CreateEntry("empty.txt").LastWriteTime = new DateTimeOffset(2020, 1, 1, 0, 0, 0, TimeSpan.Zero);
        return output.ToArray();
    }

    public static byte[] Noise(int count, uint seed)
    {
        var noise = new byte[count];
        var state = seed;
        for (var i = 0; i < count; i++)
        {
            state = (state * 1_664_525) + 1_013_904_223;
            noise[i] = (byte)(state >> 24);
        }

        return noise;
    }

    private static uint Crc32(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }

        return ~crc;
    }
}
