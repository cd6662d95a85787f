using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads the parts of one file, one after the other, and what lies between and behind them.</summary>
internal sealed class FileDecoder(FitDecodeOptions options)
{
    private readonly FaultLog _log = new(options);
    private readonly List<PartDraft> _drafts = [];
    private DecodeBudget _budget = new(options, 0);

    public FitFile Run(ReadOnlySpan<byte> bytes, int start)
    {
        _budget = new DecodeBudget(options, bytes.Length);
        if (start > 0)
            _log.Add(0, FitFaultCode.ByteOrderMark, FitFaultAction.Warn, "a byte-order mark stands before the header and was passed over");
        var at = start;
        while (at >= 0 && at < bytes.Length && !_log.MustStop)
            at = _drafts.Count < options.MaxParts ? ReadPart(bytes, at) : StopAtLimit(at);
        if (_drafts.Count == 0)
            return Unusable(new FitRejection(FitRejectionReason.NoData, FitContentKind.Fit, bytes.Length, NoDataText()));
        return new FitFile(PartAssembly.Assemble(_drafts), _log.Listed, _log.Count, null);
    }

    public FitFile Unusable(FitRejection rejection) => new([], _log.Listed, _log.Count, rejection);

    private string NoDataText() => _log.MustStop && _log.Listed.Count > 0
        ? "nothing stands before this file's first fault: " + _log.Listed[0].Detail
        : "this FIT file has no data after its header";

    private int StopAtLimit(int at)
    {
        _log.Add(at, FitFaultCode.LimitReached, FitFaultAction.Salvage, "more parts than the limit allows; the rest is not read");
        return -1;
    }

    private int StopAtCutHeader(int at)
    {
        _log.Add(at, FitFaultCode.PartWithoutData, FitFaultAction.Warn, "the header says it is longer than the rest of the file");
        return -1;
    }

    /// <summary>Reads the part at an offset and returns where the next one begins; -1 if there is none.</summary>
    private int ReadPart(ReadOnlySpan<byte> bytes, int start)
    {
        var firstFault = _log.ListedCount;
        if (!FitHeader.TryParse(bytes[start..], out var header))
            return StopAtCutHeader(start);
        JudgeHeader(header, start);
        var extent = DataExtent.Find(bytes, start, header, options.Tolerance == DamageTolerance.Tolerant);
        var decoder = ReadMessages(bytes, start + header.Size, extent);
        var end = decoder.WasClean ? decoder.Position : EndOfBroken(bytes, extent, decoder);
        var crc = extent.IsAssumed(bytes.Length) ? CrcOfAssumedEnd(bytes, start, extent.End, decoder) : extent.Crc!.Value;
        var next = Math.Min(bytes.Length, end + FitConstants.CrcSize);
        JudgeEnd(extent, crc, decoder, start);
        if (decoder.Content.Messages > 0)
            _drafts.Add(new PartDraft(start, next - start, header, crc, decoder.WasClean, decoder.Content, _log.ListedFrom(firstFault)));
        else if (!_log.MustStop)
            _log.Add(start, FitFaultCode.PartWithoutData, FitFaultAction.Reject, "no message can be read behind this header");
        return NextAfter(bytes, next, decoder.WasClean);
    }

    private PartDecoder ReadMessages(ReadOnlySpan<byte> bytes, int dataStart, DataExtent extent)
    {
        int listed = _log.ListedCount, count = _log.Count;
        var before = _budget.Copy();
        PartDecoder decoder = new(_log, _budget, options, new DeveloperFields());
        decoder.Read(bytes, dataStart, extent.End, extent.IsAssumed(bytes.Length));
        if (!decoder.Developer.PowerCameLate || _log.MustStop)
            return decoder;
        _log.RewindTo(listed, count);
        _budget = before;
        decoder = new PartDecoder(_log, _budget, options, decoder.Developer.ForSecondReading());
        decoder.Read(bytes, dataStart, extent.End, extent.IsAssumed(bytes.Length));
        return decoder;
    }

    private void JudgeHeader(FitHeader header, int start)
    {
        if (header.Size is not (FitConstants.ShortHeaderSize or FitConstants.HeaderSize))
            _log.Add(start, FitFaultCode.HeaderSizeUnusual, FitFaultAction.Warn, $"the header has {header.Size} bytes; those after the known ones were passed over");
        if (!header.CrcAgrees)
            _log.Add(start + FitConstants.HeaderCrcOffset, FitFaultCode.HeaderCrcMismatch, FitFaultAction.Warn, "the header's own CRC does not agree with it");
        if (header.ProtocolMajor > FitConstants.NewestKnownMajor)
            _log.Add(start + 1, FitFaultCode.ProtocolVersionUnknown, FitFaultAction.Warn, $"protocol version {header.ProtocolMajor} is newer than this reader; read as version {FitConstants.NewestKnownMajor}");
    }

    private void JudgeEnd(DataExtent extent, FitCrcState crc, PartDecoder decoder, int start)
    {
        if (extent.Fault is { } sizeFault)
            _log.Add(sizeFault.ByteOffset, sizeFault.Code, sizeFault.Action, sizeFault.Detail);
        var action = decoder.WasClean ? FitFaultAction.Warn : FitFaultAction.Salvage;
        if (crc == FitCrcState.Differs)
            _log.Add(extent.End, FitFaultCode.FileCrcMismatch, action, "the closing CRC does not agree: some byte is not what was recorded");
        if (crc == FitCrcState.Missing && decoder.WasClean && decoder.Content.Messages > 0)
            _log.Add(decoder.Position, FitFaultCode.FileCrcMissing, action, "the closing CRC is missing");
        PartJudgement.Judge(decoder.Content, start, _log);
    }

    private static FitCrcState CrcOfAssumedEnd(ReadOnlySpan<byte> bytes, int start, int end, PartDecoder decoder)
    {
        var nextPartFound = !decoder.WasClean && FitHeader.LooksLikeOne(bytes[decoder.Position..]);
        if (nextPartFound)
            return DataExtent.Test(bytes, start, Math.Max(start, decoder.Position - FitConstants.CrcSize));
        return end - decoder.Position == FitConstants.CrcSize ? DataExtent.Test(bytes, start, decoder.Position) : FitCrcState.Missing;
    }

    private static int EndOfBroken(ReadOnlySpan<byte> bytes, DataExtent extent, PartDecoder decoder)
    {
        if (decoder.Position < bytes.Length && FitHeader.LooksLikeOne(bytes[decoder.Position..]))
            return decoder.Position - FitConstants.CrcSize;
        var endIsSure = extent.Crc is FitCrcState.Agrees or FitCrcState.Missing
            || (extent.Crc is not null && FitHeader.LooksLikeOne(bytes[(extent.End + FitConstants.CrcSize)..]));
        return endIsSure ? extent.End : decoder.Position;
    }

    private int NextAfter(ReadOnlySpan<byte> bytes, int end, bool reportTail)
    {
        if (end >= bytes.Length || FitHeader.LooksLikeOne(bytes[end..]))
            return end < bytes.Length ? end : -1;
        var found = options.Tolerance == DamageTolerance.Tolerant ? PartSearch.FindHeader(bytes, end, bytes.Length) : -1;
        if (found >= 0)
            _log.Add(found, FitFaultCode.PartFoundInTail, FitFaultAction.Warn, $"another part begins after {found - end} bytes that belong to none");
        else if (reportTail)
            _log.Add(end, FitFaultCode.TrailingBytes, FitFaultAction.Warn, $"{bytes.Length - end} bytes at the end belong to no part and were ignored");
        return found;
    }
}
