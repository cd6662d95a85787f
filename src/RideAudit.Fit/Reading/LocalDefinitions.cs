using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>The sixteen local types of a part. A definition that comes again with the same content is made only once.</summary>
internal sealed class LocalDefinitions(FaultLog log, DeveloperFields developerFields)
{
    private const int RememberedAtMost = 1024;
    private const int MessagesToCompare = 64;
    private readonly LocalDefinition?[] slots = new LocalDefinition?[FitConstants.LocalTypes];
    private readonly LocalDefinition?[] previous = new LocalDefinition?[FitConstants.LocalTypes];
    private readonly int[] definedAt = new int[FitConstants.LocalTypes];
    private readonly Dictionary<int, (byte[] Raw, LocalDefinition Definition)> remembered = [];

    public LocalDefinition? this[int localType] => slots[localType];

    /// <summary>Reads the definition at an offset into its slot; a corrupt one empties the slot.</summary>
    public Outcome Read(ReadOnlySpan<byte> bytes, int at, int end, PartContent content, out int length)
    {
        length = 0;
        if (!DefinitionShape.TryMeasure(bytes[at..end], out DefinitionShape shape))
            return Outcome.DoesNotFit;
        length = shape.Length;
        int localType = new RecordHeader(bytes[at]).LocalType;
        content.CountUses(slots[localType]);
        (previous[localType], definedAt[localType], slots[localType]) = (slots[localType], at, null);
        if (!shape.IsPlausible)
            return Outcome.Corrupt;
        slots[localType] = Recall(bytes.Slice(at, length), out int key) ?? Make(bytes, at, end, shape, content, key);
        return Outcome.Read;
    }

    private LocalDefinition? Recall(ReadOnlySpan<byte> raw, out int key)
    {
        HashCode hash = default;
        hash.AddBytes(raw[1..]);
        key = hash.ToHashCode();
        return remembered.TryGetValue(key, out (byte[] Raw, LocalDefinition Definition) known) && raw[1..].SequenceEqual(known.Raw) ? known.Definition : null;
    }

    private LocalDefinition Make(ReadOnlySpan<byte> bytes, int at, int end, in DefinitionShape shape, PartContent content, int key)
    {
        bool repeatsDiffer = shape.WidenedDataSize != shape.DataSize;
        bool widen = repeatsDiffer && FollowsTheWidest(bytes, at, end, shape, TimeWindow.AroundLastOf(content.Records));
        ReadOnlySpan<byte> raw = bytes.Slice(at, shape.Length);
        LocalDefinition definition = new(raw, shape, widen);
        Report(definition, at, widen);
        if (!repeatsDiffer && remembered.Count < RememberedAtMost)
            remembered[key] = (raw[1..].ToArray(), definition);
        return definition;
    }

    public void CopyShapes(Span<StreamWalker.LocalShape> shapes)
    {
        for (int i = 0; i < slots.Length; i++)
            shapes[i] = slots[i] is { } d ? new StreamWalker.LocalShape(d.DataSize, d.TimeOffset, d.BigEndian) : StreamWalker.LocalShape.Undefined;
    }

    /// <summary>Takes back what was defined from an offset on: a stream that has slipped can yield definitions that look whole.</summary>
    /// <returns>What was in force, for <see cref="Restore"/>; null if nothing was taken back.</returns>
    public LocalDefinition?[]? RollBack(int from)
    {
        LocalDefinition?[] before = [.. slots];
        bool any = false;
        for (int i = 0; i < slots.Length; i++)
        {
            if (definedAt[i] < from || previous[i] is null)
                continue;
            slots[i] = previous[i];
            any = true;
        }

        return any ? before : null;
    }

    public void Restore(LocalDefinition?[] before) => before.CopyTo(slots, 0);

    public void CountUses(PartContent content)
    {
        foreach (LocalDefinition? definition in slots)
            content.CountUses(definition);
    }

    /// <summary>Devices exist that declare one field twice with two sizes and write the larger twice: see which reading gets further.</summary>
    private bool FollowsTheWidest(ReadOnlySpan<byte> bytes, int at, int end, in DefinitionShape shape, TimeWindow window)
    {
        int declared = MessagesAfter(bytes, at, end, shape.DataSize, shape, window);
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
        foreach (MessageDefinition.FieldSlot field in definition.Fields)
        {
            if (!FitBaseTypes.TryParse(field.TypeCode, out _))
                log.Add(at, FitFaultCode.UnknownBaseType, FitFaultAction.Warn, $"field {field.Number} of message {definition.Global} has the unknown base type 0x{field.TypeCode:X2} and is stepped over");
            else if (!field.IsUsable && field.Size > 0)
                log.Add(at, FitFaultCode.FieldSizeMismatch, FitFaultAction.Skip, $"field {field.Number} of message {definition.Global} has {field.Size} bytes, which its base type does not divide");
        }

        foreach (MessageDefinition.DeveloperSlot field in definition.DeveloperFields)
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
