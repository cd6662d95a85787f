using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Reads the parts of one file, one after the other, and what lies between and behind them.</summary>
internal sealed class FileDecoder(FitDecodeOptions options)
{
    private readonly FaultLog log = new(options);
    private readonly List<PartDraft> drafts = [];
    private DecodeBudget budget = new(options, 0);

    public FitFile Run(ReadOnlySpan<byte> bytes, int start)
    {
        budget = new DecodeBudget(options, bytes.Length);
        if (start > 0)
            log.Add(0, FitFaultCode.ByteOrderMark, FitFaultAction.Warn, "a byte-order mark stands before the header and was passed over");
        int at = start;
        while (at >= 0 && at < bytes.Length && !log.MustStop)
            at = drafts.Count < options.MaxParts ? ReadPart(bytes, at) : StopAtLimit(at);
        if (drafts.Count == 0)
            return Unusable(new FitRejection(FitRejectionReason.NoData, FitContentKind.Fit, bytes.Length, NoDataText()));
        return new FitFile(PartAssembly.Assemble(drafts), log.Listed, log.Count, null);
    }

    public FitFile Unusable(FitRejection rejection) => new([], log.Listed, log.Count, rejection);

    private string NoDataText() => log.MustStop && log.Listed.Count > 0
        ? "nothing stands before this file's first fault: " + log.Listed[0].Detail
        : "this FIT file has no data after its header";

    private int StopAtLimit(int at)
    {
        log.Add(at, FitFaultCode.LimitReached, FitFaultAction.Salvage, "more parts than the limit allows; the rest is not read");
        return -1;
    }

    private int StopAtCutHeader(int at)
    {
        log.Add(at, FitFaultCode.PartWithoutData, FitFaultAction.Warn, "the header says it is longer than the rest of the file");
        return -1;
    }

    /// <summary>Reads the part at an offset and returns where the next one begins; -1 if there is none.</summary>
    private int ReadPart(ReadOnlySpan<byte> bytes, int start)
    {
        int firstFault = log.ListedCount;
        if (!FitHeader.TryParse(bytes[start..], out FitHeader header))
            return StopAtCutHeader(start);
        JudgeHeader(header, start);
        DataExtent extent = DataExtent.Find(bytes, start, header, options.Tolerance == DamageTolerance.Tolerant);
        PartDecoder decoder = ReadMessages(bytes, start + header.Size, extent);
        int end = decoder.WasClean ? decoder.Position : EndOfBroken(bytes, extent, decoder);
        FitCrcState crc = extent.IsAssumed(bytes.Length) ? CrcOfAssumedEnd(bytes, start, extent.End, decoder) : extent.Crc!.Value;
        int next = Math.Min(bytes.Length, end + FitConstants.CrcSize);
        JudgeEnd(extent, crc, decoder, start);
        if (decoder.Content.Messages > 0)
            drafts.Add(new PartDraft(start, next - start, header, crc, decoder.WasClean, decoder.Content, log.ListedFrom(firstFault)));
        else if (!log.MustStop)
            log.Add(start, FitFaultCode.PartWithoutData, FitFaultAction.Reject, "no message can be read behind this header");
        return NextAfter(bytes, next, decoder.WasClean);
    }

    private PartDecoder ReadMessages(ReadOnlySpan<byte> bytes, int dataStart, DataExtent extent)
    {
        int listed = log.ListedCount, count = log.Count;
        DecodeBudget before = budget.Copy();
        PartDecoder decoder = new(log, budget, options, new DeveloperFields());
        decoder.Read(bytes, dataStart, extent.End, extent.IsAssumed(bytes.Length));
        if (!decoder.Developer.PowerCameLate || log.MustStop)
            return decoder;
        log.RewindTo(listed, count);
        budget = before;
        decoder = new PartDecoder(log, budget, options, decoder.Developer.ForSecondReading());
        decoder.Read(bytes, dataStart, extent.End, extent.IsAssumed(bytes.Length));
        return decoder;
    }

    private void JudgeHeader(FitHeader header, int start)
    {
        if (header.Size is not (FitConstants.ShortHeaderSize or FitConstants.HeaderSize))
            log.Add(start, FitFaultCode.HeaderSizeUnusual, FitFaultAction.Warn, $"the header has {header.Size} bytes; those after the known ones were passed over");
        if (!header.CrcAgrees)
            log.Add(start + FitConstants.HeaderCrcOffset, FitFaultCode.HeaderCrcMismatch, FitFaultAction.Warn, "the header's own CRC does not agree with it");
        if (header.ProtocolMajor > FitConstants.NewestKnownMajor)
            log.Add(start + 1, FitFaultCode.ProtocolVersionUnknown, FitFaultAction.Warn, $"protocol version {header.ProtocolMajor} is newer than this reader; read as version {FitConstants.NewestKnownMajor}");
    }

    private void JudgeEnd(DataExtent extent, FitCrcState crc, PartDecoder decoder, int start)
    {
        if (extent.Fault is { } sizeFault)
            log.Add(sizeFault.ByteOffset, sizeFault.Code, sizeFault.Action, sizeFault.Detail);
        FitFaultAction action = decoder.WasClean ? FitFaultAction.Warn : FitFaultAction.Salvage;
        if (crc == FitCrcState.Differs)
            log.Add(extent.End, FitFaultCode.FileCrcMismatch, action, "the closing CRC does not agree: some byte is not what was recorded");
        if (crc == FitCrcState.Missing && decoder.WasClean && decoder.Content.Messages > 0)
            log.Add(decoder.Position, FitFaultCode.FileCrcMissing, action, "the closing CRC is missing");
        PartJudgement.Judge(decoder.Content, start, log);
    }

    private static FitCrcState CrcOfAssumedEnd(ReadOnlySpan<byte> bytes, int start, int end, PartDecoder decoder)
    {
        bool nextPartFound = !decoder.WasClean && FitHeader.LooksLikeOne(bytes[decoder.Position..]);
        if (nextPartFound)
            return DataExtent.Test(bytes, start, Math.Max(start, decoder.Position - FitConstants.CrcSize));
        return end - decoder.Position == FitConstants.CrcSize ? DataExtent.Test(bytes, start, decoder.Position) : FitCrcState.Missing;
    }

    private static int EndOfBroken(ReadOnlySpan<byte> bytes, DataExtent extent, PartDecoder decoder)
    {
        if (decoder.Position < bytes.Length && FitHeader.LooksLikeOne(bytes[decoder.Position..]))
            return decoder.Position - FitConstants.CrcSize;
        bool endIsSure = extent.Crc is FitCrcState.Agrees or FitCrcState.Missing
            || (extent.Crc is not null && FitHeader.LooksLikeOne(bytes[(extent.End + FitConstants.CrcSize)..]));
        return endIsSure ? extent.End : decoder.Position;
    }

    private int NextAfter(ReadOnlySpan<byte> bytes, int end, bool reportTail)
    {
        if (end >= bytes.Length || FitHeader.LooksLikeOne(bytes[end..]))
            return end < bytes.Length ? end : -1;
        int found = options.Tolerance == DamageTolerance.Tolerant ? PartSearch.FindHeader(bytes, end, bytes.Length) : -1;
        if (found >= 0)
            log.Add(found, FitFaultCode.PartFoundInTail, FitFaultAction.Warn, $"another part begins after {found - end} bytes that belong to none");
        else if (reportTail)
            log.Add(end, FitFaultCode.TrailingBytes, FitFaultAction.Warn, $"{bytes.Length - end} bytes at the end belong to no part and were ignored");
        return found;
    }
}
