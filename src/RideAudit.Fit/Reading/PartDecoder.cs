using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads the messages of one part. Everything it knows (definitions, times, counters, descriptions) ends with the part.</summary>
internal sealed class PartDecoder(FaultLog log, DecodeBudget budget, FitDecodeOptions options, DeveloperFields developerFields)
{
    private const int RowsMadeAtOnce = 1 << 17;
    private const int BytesDoubtedBeforeBreak = 512;
    private readonly LocalDefinitions _locals = new(log, developerFields);
    private readonly MessageReader _messages = new(log, budget, developerFields, options.Channels);
    private bool _limitReported;
    private int? _nextHeader;
    private FitFaultCode _breakCode;

    public PartContent Content => _messages.Content;

    public DeveloperFields Developer => developerFields;

    /// <summary>Where reading ended: the data end, a break that could not be passed, or the header of a following part.</summary>
    public int Position { get; private set; }

    /// <summary>True if every byte up to the data end was read as a message.</summary>
    public bool WasClean { get; private set; } = true;

    /// <summary>Reads the messages between two offsets.</summary>
    /// <param name="bytes">The whole file, also what lies before and behind the part.</param>
    /// <param name="start">Offset of the first message.</param>
    /// <param name="end">Offset of the byte after the last message.</param>
    /// <param name="crcMayFollow">True if the end is only assumed, so that two bytes left over are a CRC.</param>
    public void Read(ReadOnlySpan<byte> bytes, int start, int end, bool crcMayFollow)
    {
        Position = start;
        while (Position < end && !log.MustStop)
        {
            if (crcMayFollow && end - Position == FitConstants.CrcSize)
                break;
            RecordHeader header = new(bytes[Position]);
            var read = header.IsDefinition ? ReadDefinition(bytes, end) : ReadData(bytes, header, end);
            if (!read && !PassBreak(bytes, end))
                break;
        }

        _locals.CountUses(Content);
        _messages.Finish(start);
    }

    private bool ReadDefinition(ReadOnlySpan<byte> bytes, int end)
    {
        var outcome = _locals.Read(bytes, Position, end, Content, out var length);
        if (outcome == LocalDefinitions.Outcome.Read)
            Position += length;
        _breakCode = outcome == LocalDefinitions.Outcome.Corrupt ? FitFaultCode.CorruptDefinition : FitFaultCode.Truncated;
        return outcome == LocalDefinitions.Outcome.Read;
    }

    private bool ReadData(ReadOnlySpan<byte> bytes, RecordHeader header, int end)
    {
        var definition = _locals[header.LocalType];
        if (definition is null || definition.DataSize > end - Position - 1)
        {
            _breakCode = definition is null ? FitFaultCode.UndefinedLocalType : FitFaultCode.Truncated;
            return false;
        }

        var data = bytes.Slice(Position + 1, definition.DataSize);
        if (definition.Global == GlobalMessage.Record)
            return ReadRecords(definition, bytes, data, end);
        if (!_messages.ReadOther(definition, header, data, Position))
            ReportLimit();
        Advance(definition, 1);
        return true;
    }

    private bool ReadRecords(LocalDefinition definition, ReadOnlySpan<byte> bytes, ReadOnlySpan<byte> data, int end)
    {
        if (_messages.JumpsTo(definition, data) is { } time && HasSlipped(bytes, end, time))
            return false;
        var read = 1;
        if (budget.Records > 0)
        {
            read = _messages.ReadRecords(definition, bytes[..end], Position, MakeRoom(definition, end));
            budget.Records -= read;
        }
        else
        {
            ReportLimit();
        }

        Advance(definition, read);
        return true;
    }

    private void Advance(LocalDefinition definition, int count)
    {
        definition.Count += count;
        Content.Messages += count;
        Position += count * (1 + definition.DataSize);
    }

    /// <summary>Makes room for records and says how many may be read.</summary>
    private int MakeRoom(LocalDefinition definition, int end)
    {
        var records = Content.Records;
        if (records.Count == records.Capacity)
            records.Grow(Math.Min(((end - Position) / (1 + definition.DataSize)) + 1, Math.Min(RowsMadeAtOnce, budget.Records)));
        return Math.Min(records.Capacity - records.Count, budget.Records);
    }

    private void ReportLimit()
    {
        if (!_limitReported)
            log.Add(Position, FitFaultCode.LimitReached, FitFaultAction.Salvage, "more messages than the limit allows; the rest is not kept");
        _limitReported = true;
    }

    /// <summary>Deals with a place where the stream makes no sense; true if reading can go on.</summary>
    private bool PassBreak(ReadOnlySpan<byte> bytes, int end)
    {
        var brokenAt = Position;
        WasClean = false;
        var next = options.Tolerance == DamageTolerance.Tolerant && !Content.IsClosed ? FindNext(bytes, end) : -1;
        var isLast = next < 0;
        log.Add(brokenAt, _breakCode, FitFaultAction.Salvage, BreakText.Describe(_breakCode, bytes[brokenAt], isLast));
        DropDoubtful(brokenAt);
        if (isLast)
            return false;
        Position = next;
        if (FitHeader.LooksLikeOne(bytes[next..]))
            return false;
        log.Add(next, FitFaultCode.Resynchronised, FitFaultAction.Salvage, $"{next - brokenAt} bytes passed over; messages make sense again from here");
        return true;
    }

    private void DropDoubtful(int offset)
    {
        var dropped = DoubtfulTail.Drop(Content);
        if (dropped > 0)
            log.Add(offset, FitFaultCode.DoubtfulMessagesDropped, FitFaultAction.Skip, $"{dropped} messages before the break had times more than a day off and were dropped");
    }

    private int FindNext(ReadOnlySpan<byte> bytes, int end)
    {
        var header = FindHeader(bytes, end);
        var searchEnd = header >= 0 ? header : end;
        var resumed = FindSense(bytes, searchEnd);
        if (_locals.RollBack(Math.Max(0, Position - BytesDoubtedBeforeBreak)) is { } inForce)
        {
            var withEarlier = FindSense(bytes, searchEnd);
            if (withEarlier >= 0 && (resumed < 0 || withEarlier < resumed))
                return withEarlier;
            _locals.Restore(inForce);
        }

        return resumed >= 0 ? resumed : header;
    }

    /// <summary>The next header at or behind the position; looked for once, not again at every break.</summary>
    private int FindHeader(ReadOnlySpan<byte> bytes, int end)
    {
        if (_nextHeader is { } known && (known < 0 || known >= Position))
            return known;
        _nextHeader = PartSearch.FindHeader(bytes, Position, end);
        return _nextHeader.Value;
    }

    private int FindSense(ReadOnlySpan<byte> bytes, int end)
    {
        Span<StreamWalker.LocalShape> shapes = stackalloc StreamWalker.LocalShape[FitConstants.LocalTypes];
        _locals.CopyShapes(shapes);
        return Resynchroniser.Find(bytes, Position + 1, end, shapes, TimeWindow.AroundLastOf(Content.Records), budget);
    }

    /// <summary>A record whose time is far off: the clock was set, and the messages behind it agree; or the stream has slipped, and they do not.</summary>
    private bool HasSlipped(ReadOnlySpan<byte> bytes, int end, uint time)
    {
        Span<StreamWalker.LocalShape> shapes = stackalloc StreamWalker.LocalShape[FitConstants.LocalTypes];
        _locals.CopyShapes(shapes);
        _breakCode = FitFaultCode.StreamSlipped;
        return !Resynchroniser.MakesSense(bytes, Position, end, shapes, TimeWindow.Around(time))
            && (options.Tolerance != DamageTolerance.Tolerant || FindSense(bytes, end) >= 0);
    }

    /// <summary>Sentences for breaks in a message stream.</summary>
    private static class BreakText
    {
        public static string Describe(FitFaultCode code, byte header, bool isLast)
        {
            var what = code switch
            {
                FitFaultCode.UndefinedLocalType => $"a message of local type {new Protocol.RecordHeader(header).LocalType} that was never defined",
                FitFaultCode.StreamSlipped => "a record whose time is more than a day off, and messages behind it that make no sense",
                FitFaultCode.CorruptDefinition => "a definition that no device can mean",
                _ => "a message that does not fit into the rest of the data",
            };
            return isLast ? what + "; reading ends here" : what;
        }
    }
}
