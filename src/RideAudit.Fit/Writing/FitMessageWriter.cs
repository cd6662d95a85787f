using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Writing;

/// <summary>Writes definitions and data messages one by one, exactly as told: the tool for unusual files. <see cref="FitWriter"/> is the easy one.</summary>
public sealed class FitMessageWriter
{
    private readonly List<byte> _data = [];
    private readonly Layout?[] _layouts = new Layout?[FitConstants.LocalTypes];

    /// <summary>Bytes of messages written so far, without header and CRC.</summary>
    public int Length => _data.Count;

    /// <summary>Writes a definition; it replaces an earlier one of the same local type.</summary>
    /// <param name="localType">Local type, 0 to 15; only 0 to 3 can be used with compressed times.</param>
    /// <param name="globalMessage">Global message number.</param>
    /// <param name="fields">The fields in the order of their values.</param>
    /// <param name="order">Byte order of the definition and its data.</param>
    /// <param name="developerFields">Developer fields, after the others; none leaves the definition's developer bit unset.</param>
    /// <exception cref="ArgumentOutOfRangeException">The local type is not 0 to 15, or there are more than 255 fields.</exception>
    public void Define(
        int localType,
        ushort globalMessage,
        ReadOnlySpan<FitFieldLayout> fields,
        FitByteOrder order = FitByteOrder.LittleEndian,
        ReadOnlySpan<FitDeveloperFieldLayout> developerFields = default)
    {
        CheckLocalType(localType, FitConstants.LocalTypes - 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fields.Length, byte.MaxValue, nameof(fields));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(developerFields.Length, byte.MaxValue, nameof(developerFields));
        var hasDeveloperFields = developerFields.Length > 0;
        _data.Add((byte)(FitConstants.DefinitionBit | (hasDeveloperFields ? FitConstants.DeveloperBit : 0) | localType));
        _data.Add(0);
        _data.Add((byte)order);
        byte low = (byte)globalMessage, high = (byte)(globalMessage >> 8);
        _data.AddRange(order == FitByteOrder.BigEndian ? [high, low] : [low, high]);
        _data.Add((byte)fields.Length);
        foreach (var field in fields)
            _data.AddRange([field.Number, field.Size, (byte)field.Type]);
        if (hasDeveloperFields)
            _data.Add((byte)developerFields.Length);
        foreach (var field in developerFields)
            _data.AddRange([field.Number, field.Size, field.DeveloperIndex]);
        _layouts[localType] = new Layout(order, fields.ToArray(), developerFields.ToArray());
    }

    /// <summary>Writes a data message.</summary>
    /// <param name="localType">Local type, defined before.</param>
    /// <param name="values">One value a field, developer fields last; fields without one are written as missing.</param>
    /// <exception cref="InvalidOperationException">The local type is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value does not fit its field's type.</exception>
    public void Write(int localType, params ReadOnlySpan<FitValue> values)
    {
        CheckLocalType(localType, FitConstants.LocalTypes - 1);
        WriteData((byte)localType, localType, values);
    }

    /// <summary>Writes a data message whose header carries the low five bits of its time.</summary>
    /// <param name="localType">Local type, 0 to 3, defined before.</param>
    /// <param name="timestamp">Time, FIT seconds; less than 32 s after the last written time, or a reader will resolve it wrongly.</param>
    /// <param name="values">One value a field, developer fields last.</param>
    /// <exception cref="InvalidOperationException">The local type is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The local type is above 3, or a value does not fit its field's type.</exception>
    public void WriteCompressed(int localType, uint timestamp, params ReadOnlySpan<FitValue> values)
    {
        CheckLocalType(localType, FitConstants.CompressedLocalTypeMask);
        var header = FitConstants.CompressedTimeBit | (localType << FitConstants.CompressedLocalTypeShift) | (int)(timestamp & FitConstants.TimeOffsetMask);
        WriteData((byte)header, localType, values);
    }

    /// <summary>Writes bytes as they are, for files that are broken on purpose.</summary>
    /// <param name="bytes">Any bytes.</param>
    public void WriteRaw(ReadOnlySpan<byte> bytes) => _data.AddRange(bytes);

    /// <summary>The finished file: header, messages, CRC. Files may be chained by joining their bytes.</summary>
    /// <param name="options">Settings of the header; null for the usual ones.</param>
    public byte[] Finish(FitWriterOptions? options = null) =>
        Container.Wrap(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_data), options ?? new FitWriterOptions());

    private static void CheckLocalType(int localType, int highest)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(localType);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(localType, highest);
    }

    private void WriteData(byte header, int localType, ReadOnlySpan<FitValue> values)
    {
        var layout = _layouts[localType] ?? throw new InvalidOperationException($"Local type {localType} is not defined.");
        _data.Add(header);
        var at = 0;
        foreach (var field in layout.Fields)
            Append(at < values.Length ? values[at++] : FitValue.Missing, field.Type, field.Size, layout.Order);
        foreach (var field in layout.DeveloperFields)
            Append(at < values.Length ? values[at++] : FitValue.Missing, field.Type, field.Size, layout.Order);
    }

    private void Append(FitValue value, FitBaseType type, byte size, FitByteOrder order)
    {
        Span<byte> field = stackalloc byte[size];
        ValueEncoder.Encode(value, type, order, field);
        _data.AddRange(field);
    }

    private sealed record Layout(FitByteOrder Order, FitFieldLayout[] Fields, FitDeveloperFieldLayout[] DeveloperFields);
}
