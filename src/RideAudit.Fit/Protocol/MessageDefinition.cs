namespace RideAudit.Fit.Protocol;

/// <summary>A definition message: which fields the data messages of a local type hold, and where.</summary>
internal class MessageDefinition
{
    /// <summary>Reads the definition that lies in some bytes.</summary>
    /// <param name="bytes">From the header byte to the definition's end.</param>
    /// <param name="shape">What measuring these bytes gave.</param>
    /// <param name="widenRepeats">Step over repeated fields by the largest of their sizes.</param>
    public MessageDefinition(ReadOnlySpan<byte> bytes, in DefinitionShape shape, bool widenRepeats)
    {
        var offset = 0;
        Global = shape.Global;
        BigEndian = shape.BigEndian;
        Fields = ReadFields(shape.Fields(bytes), widenRepeats, ref offset);
        DeveloperFields = ReadDeveloperFields(shape.DeveloperFields(bytes), ref offset);
        DataSize = offset;
        TimeField = Array.FindIndex(Fields, f => f.Number == FitConstants.TimestampField && f.IsUsable);
        var at = TimeField;
        TimeOffset = at >= 0 && Fields[at] is { Type: FitBaseType.UInt32, Elements: > 0 } ? Fields[at].Offset : -1;
    }

    public ushort Global { get; }

    public bool BigEndian { get; }

    public FieldSlot[] Fields { get; }

    public DeveloperSlot[] DeveloperFields { get; }

    /// <summary>Bytes of a data message behind its header byte.</summary>
    public int DataSize { get; }

    /// <summary>Index of the timestamp field; -1 if there is none.</summary>
    public int TimeField { get; }

    /// <summary>Place of a timestamp of the usual type; -1 if it is absent or of another type.</summary>
    public int TimeOffset { get; }

    private static FieldSlot[] ReadFields(ReadOnlySpan<byte> triples, bool widenRepeats, ref int offset)
    {
        var fields = new FieldSlot[triples.Length / FitConstants.FieldDefinitionSize];
        for (var i = 0; i < fields.Length; i++)
        {
            var triple = triples.Slice(i * FitConstants.FieldDefinitionSize, FitConstants.FieldDefinitionSize);
            var known = FitBaseTypes.TryParse(triple[2], out var type);
            var size = widenRepeats ? DefinitionShape.WidestOf(triples, triple[0]) : triple[1];
            var usable = known && size > 0 && size % FitBaseTypes.SizeOf(type) == 0;
            fields[i] = new FieldSlot(triple[0], size, triple[2], type, usable, offset);
            offset += size;
        }

        return fields;
    }

    private static DeveloperSlot[] ReadDeveloperFields(ReadOnlySpan<byte> triples, ref int offset)
    {
        if (triples.IsEmpty)
            return [];
        var fields = new DeveloperSlot[triples.Length / FitConstants.FieldDefinitionSize];
        for (var i = 0; i < fields.Length; i++)
        {
            var triple = triples.Slice(i * FitConstants.FieldDefinitionSize, FitConstants.FieldDefinitionSize);
            fields[i] = new DeveloperSlot(triple[0], triple[1], triple[2], offset);
            offset += triple[1];
        }

        return fields;
    }

    /// <summary>One field of a definition with its own place in the message, so that no field can move another.</summary>
    internal readonly record struct FieldSlot(byte Number, byte Size, byte TypeCode, FitBaseType Type, bool IsUsable, int Offset)
    {
        public int ElementSize => FitBaseTypes.SizeOf(Type);

        public int Elements => IsUsable ? Size / ElementSize : 0;
    }

    /// <summary>One developer field of a definition; what it means is looked up when data are read.</summary>
    internal readonly record struct DeveloperSlot(byte Number, byte Size, byte Index, int Offset)
    {
        public int Key => (Index << 8) | Number;
    }
}
