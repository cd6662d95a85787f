namespace RideAudit.Ingest.Archives;

/// <summary>The checksum of zip entries: CRC-32 of ISO 3309, polynomial 0xEDB88320 reflected.</summary>
internal static class Crc32
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(i => Entry((uint)i))];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
            crc = Table[(byte)(crc ^ b)] ^ (crc >> 8);
        return ~crc;
    }

    private static uint Entry(uint value)
    {
        for (var bit = 0; bit < 8; bit++)
            value = (value & 1) == 0 ? value >> 1 : 0xEDB88320 ^ (value >> 1);
        return value;
    }
}
