using System.Buffers.Binary;

namespace RideAudit.Fit.Protocol;

/// <summary>The outline of a definition message, measured without keeping anything: enough to walk a stream and to judge it.</summary>
internal readonly record struct DefinitionShape
{
    private const int UnknownTypesTolerated = 2;
    private const int RepeatsTolerated = 4;

    /// <summary>Bytes with the header byte.</summary>
    public int Length { get; private init; }

    public ushort Global { get; private init; }

    public bool BigEndian { get; private init; }

    /// <summary>Bytes of a data message as declared, without its header byte.</summary>
    public int DataSize { get; private init; }

    /// <summary>The same with every repeated field as wide as its widest declaration.</summary>
    public int WidenedDataSize { get; private init; }

    /// <summary>Place of a timestamp of the usual type; -1 if none.</summary>
    public int TimeOffset { get; private init; }

    /// <summary>False for a definition no device can mean.</summary>
    public bool IsPlausible { get; private init; }

    private int FieldCount { get; init; }

    public static bool TryMeasure(ReadOnlySpan<byte> bytes, out DefinitionShape shape)
    {
        shape = default;
        const int countAt = FitConstants.DefinitionPrefixSize;
        if (bytes.Length <= countAt)
            return false;
        int fieldCount = bytes[countAt];
        var length = countAt + 1 + (FitConstants.FieldDefinitionSize * fieldCount);
        var developerCount = 0;
        if (new RecordHeader(bytes[0]).HasDeveloperFields)
        {
            if (length >= bytes.Length)
                return false;
            developerCount = bytes[length];
            length += 1 + (FitConstants.FieldDefinitionSize * developerCount);
        }

        if (length > bytes.Length)
            return false;
        shape = Judge(bytes[..length], fieldCount, developerCount);
        return true;
    }

    public ReadOnlySpan<byte> Fields(ReadOnlySpan<byte> bytes) =>
        bytes.Slice(FitConstants.DefinitionPrefixSize + 1, FitConstants.FieldDefinitionSize * FieldCount);

    public ReadOnlySpan<byte> DeveloperFields(ReadOnlySpan<byte> bytes)
    {
        var start = FitConstants.DefinitionPrefixSize + 1 + (FitConstants.FieldDefinitionSize * FieldCount);
        return start < Length ? bytes[(start + 1)..Length] : [];
    }

    public static byte WidestOf(ReadOnlySpan<byte> triples, byte number)
    {
        byte widest = 0;
        for (var i = 0; i < triples.Length; i += FitConstants.FieldDefinitionSize)
        {
            if (triples[i] == number)
                widest = Math.Max(widest, triples[i + 1]);
        }

        return widest;
    }

    private static DefinitionShape Judge(ReadOnlySpan<byte> bytes, int fieldCount, int developerCount)
    {
        var bigEndian = bytes[2] == 1;
        DefinitionShape shape = new()
        {
            Length = bytes.Length,
            FieldCount = fieldCount,
            BigEndian = bigEndian,
            Global = bigEndian ? BinaryPrimitives.ReadUInt16BigEndian(bytes[3..]) : BinaryPrimitives.ReadUInt16LittleEndian(bytes[3..]),
        };
        var developerSize = 0;
        var developer = shape.DeveloperFields(bytes);
        for (var i = 0; i < developerCount; i++)
            developerSize += developer[(i * FitConstants.FieldDefinitionSize) + 1];
        return MeasureFields(shape, shape.Fields(bytes), developerSize, bytes[2] <= 1);
    }

    private static DefinitionShape MeasureFields(DefinitionShape shape, ReadOnlySpan<byte> triples, int developerSize, bool knownByteOrder)
    {
        Span<byte> widest = stackalloc byte[256];
        widest.Clear();
        int size = 0, timeOffset = -1, unknownTypes = 0, repeats = 0, widened = 0;
        Span<bool> seen = stackalloc bool[256];
        seen.Clear();
        for (var i = 0; i < triples.Length; i += FitConstants.FieldDefinitionSize)
        {
            byte number = triples[i], fieldSize = triples[i + 1];
            unknownTypes += FitBaseTypes.TryParse(triples[i + 2], out var type) ? 0 : 1;
            repeats += seen[number] ? 1 : 0;
            if (number == FitConstants.TimestampField && timeOffset < 0 && fieldSize >= 4 && fieldSize % 4 == 0 && type == FitBaseType.UInt32)
                timeOffset = size;
            seen[number] = true;
            widest[number] = Math.Max(widest[number], fieldSize);
            size += fieldSize;
        }

        for (var i = 0; i < triples.Length; i += FitConstants.FieldDefinitionSize)
            widened += widest[triples[i]];
        return shape with
        {
            DataSize = size + developerSize,
            WidenedDataSize = widened + developerSize,
            TimeOffset = timeOffset,
            IsPlausible = knownByteOrder && unknownTypes <= UnknownTypesTolerated && repeats <= RepeatsTolerated,
        };
    }
}
