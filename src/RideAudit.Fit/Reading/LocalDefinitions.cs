using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>The sixteen local types of a part. A definition that comes again with the same content is made only once.</summary>
internal sealed class LocalDefinitions(FaultLog log, DeveloperFields developerFields)
{
    private const int RememberedAtMost = 1024;
    private const int MessagesToCompare = 64;
    private readonly LocalDefinition?[] _slots = new LocalDefinition?[FitConstants.LocalTypes];
    private readonly LocalDefinition?[] _previous = new LocalDefinition?[FitConstants.LocalTypes];
    private readonly int[] _definedAt = new int[FitConstants.LocalTypes];
    private readonly Dictionary<int, (byte[] Raw, LocalDefinition Definition)> _remembered = [];

    public LocalDefinition? this[int localType] => _slots[localType];

    /// <summary>Reads the definition at an offset into its slot; a corrupt one empties the slot.</summary>
    public Outcome Read(ReadOnlySpan<byte> bytes, int at, int end, PartContent content, out int length)
    {
        length = 0;
        if (!DefinitionShape.TryMeasure(bytes[at..end], out var shape))
            return Outcome.DoesNotFit;
        length = shape.Length;
        var localType = new RecordHeader(bytes[at]).LocalType;
        content.CountUses(_slots[localType]);
        (_previous[localType], _definedAt[localType], _slots[localType]) = (_slots[localType], at, null);
        if (!shape.IsPlausible)
            return Outcome.Corrupt;
        _slots[localType] = Recall(bytes.Slice(at, length), out var key) ?? Make(bytes, at, end, shape, content, key);
        return Outcome.Read;
    }

    private LocalDefinition? Recall(ReadOnlySpan<byte> raw, out int key)
    {
        HashCode hash = default;
        hash.AddBytes(raw[1..]);
        key = hash.ToHashCode();
        return _remembered.TryGetValue(key, out var known) && raw[1..].SequenceEqual(known.Raw) ? known.Definition : null;
    }

    private LocalDefinition Make(ReadOnlySpan<byte> bytes, int at, int end, in DefinitionShape shape, PartContent content, int key)
    {
        var repeatsDiffer = shape.WidenedDataSize != shape.DataSize;
        var widen = repeatsDiffer && FollowsTheWidest(bytes, at, end, shape, TimeWindow.AroundLastOf(content.Records));
        var raw = bytes.Slice(at, shape.Length);
        LocalDefinition definition = new(raw, shape, widen);
        Report(definition, at, widen);
        if (!repeatsDiffer && _remembered.Count < RememberedAtMost)
            _remembered[key] = (raw[1..].ToArray(), definition);
        return definition;
    }

    public void CopyShapes(Span<StreamWalker.LocalShape> shapes)
    {
        for (var i = 0; i < _slots.Length; i++)
            shapes[i] = _slots[i] is { } d ? new StreamWalker.LocalShape(d.DataSize, d.TimeOffset, d.BigEndian) : StreamWalker.LocalShape.Undefined;
    }

    /// <summary>Takes back what was defined from an offset on: a stream that has slipped can yield definitions that look whole.</summary>
    /// <returns>What was in force, for <see cref="Restore"/>; null if nothing was taken back.</returns>
    public LocalDefinition?[]? RollBack(int from)
    {
        LocalDefinition?[] before = [.. _slots];
        var any = false;
        for (var i = 0; i < _slots.Length; i++)
        {
            if (_definedAt[i] < from || _previous[i] is null)
                continue;
            _slots[i] = _previous[i];
            any = true;
        }

        return any ? before : null;
    }

    public void Restore(LocalDefinition?[] before) => before.CopyTo(_slots, 0);

    public void CountUses(PartContent content)
    {
        foreach (var definition in _slots)
            content.CountUses(definition);
    }

    /// <summary>Devices exist that declare one field twice with two sizes and write the larger twice: see which reading gets further.</summary>
    private bool FollowsTheWidest(ReadOnlySpan<byte> bytes, int at, int end, in DefinitionShape shape, TimeWindow window)
    {
        var declared = MessagesAfter(bytes, at, end, shape.DataSize, shape, window);
        return MessagesAfter(bytes, at, end, shape.WidenedDataSize, shape, window) > declared;
    }

    private int MessagesAfter(ReadOnlySpan<byte> bytes, int at, int end, int size, in DefinitionShape shape, TimeWindow window)
    {
        Span<StreamWalker.LocalShape> shapes = stackalloc StreamWalker.LocalShape[FitConstants.LocalTypes];
        CopyShapes(shapes);
        shapes[new RecordHeader(bytes[at]).LocalType] = new StreamWalker.LocalShape(size, shape.TimeOffset, shape.BigEndian);
        StreamWalker walker = new(bytes, end, shapes, window);
        walker.Walk(at + shape.Length, MessagesToCompare);
        return walker.Messages;
    }

    private void Report(MessageDefinition definition, int at, bool widened)
    {
        if (widened)
            log.Add(at, FitFaultCode.RepeatedFieldWidened, FitFaultAction.Warn, $"message {definition.Global} declares a field twice with two sizes; the data follow the larger");
        foreach (var field in definition.Fields)
        {
            if (!FitBaseTypes.TryParse(field.TypeCode, out _))
                log.Add(at, FitFaultCode.UnknownBaseType, FitFaultAction.Warn, $"field {field.Number} of message {definition.Global} has the unknown base type 0x{field.TypeCode:X2} and is stepped over");
            else if (!field.IsUsable && field.Size > 0)
                log.Add(at, FitFaultCode.FieldSizeMismatch, FitFaultAction.Skip, $"field {field.Number} of message {definition.Global} has {field.Size} bytes, which its base type does not divide");
        }

        foreach (var field in definition.DeveloperFields)
            developerFields.NoteUse(field.Key, at);
    }

    /// <summary>What came of reading a definition message.</summary>
    internal enum Outcome
    {
        Read,
        DoesNotFit,
        Corrupt,
    }
}
