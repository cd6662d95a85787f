namespace RideAudit.Fit.Protocol;

/// <summary>A data message seen through its definition.</summary>
internal readonly ref struct MessageView(MessageDefinition definition, ReadOnlySpan<byte> data)
{
    private readonly ReadOnlySpan<byte> _data = data;

    public MessageDefinition Definition { get; } = definition;

    /// <summary>The first valid number among a field's declarations, by its element; false if there is none.</summary>
    public bool TryNumber(byte number, out double value, int element = 0)
    {
        foreach (ref readonly var slot in Definition.Fields.AsSpan())
        {
            if (slot.Number == number && element < slot.Elements
                && FieldReader.TryReadNumber(_data[(slot.Offset + (element * slot.ElementSize))..], slot.Type, Definition.BigEndian, out value))
                return true;
        }

        value = double.NaN;
        return false;
    }

    /// <summary>A number within limits after scaling; null if absent, invalid or outside.</summary>
    public double? Number(byte number, double scale = 1, double min = 0, double max = uint.MaxValue) =>
        TryNumber(number, out var raw) && raw / scale >= min && raw / scale <= max ? raw / scale : null;

    public int? Int(byte number, int max = int.MaxValue) => (int?)Number(number, 1, 0, max);

    public byte? Byte(byte number) => (byte?)Number(number, 1, 0, byte.MaxValue);

    public ushort? UShort(byte number) => (ushort?)Number(number, 1, 0, ushort.MaxValue);

    public uint? UInt(byte number) => (uint?)Number(number);

    /// <summary>A time in FIT seconds; null if absent or invalid.</summary>
    public uint? Time(byte number) => (uint?)Number(number, 1, 0, uint.MaxValue - 1);

    /// <summary>How many elements a field has; 0 if it is absent.</summary>
    public int Elements(byte number)
    {
        foreach (ref readonly var slot in Definition.Fields.AsSpan())
        {
            if (slot.Number == number)
                return slot.Elements;
        }

        return 0;
    }

    /// <summary>A field's bytes as declared; empty if it is absent.</summary>
    public ReadOnlySpan<byte> Bytes(byte number)
    {
        foreach (ref readonly var slot in Definition.Fields.AsSpan())
        {
            if (slot.Number == number)
                return _data.Slice(slot.Offset, slot.Size);
        }

        return [];
    }

    public string Text(byte number) => FieldReader.ReadText(Bytes(number));

    public ReadOnlySpan<byte> Developer(in MessageDefinition.DeveloperSlot slot) => _data.Slice(slot.Offset, slot.Size);
}
