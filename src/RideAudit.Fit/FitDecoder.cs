using RideAudit.Fit.Protocol;
using RideAudit.Fit.Reading;

namespace RideAudit.Fit;

/// <summary>Decodes FIT files. Content never makes it throw: what is wrong is part of the result.</summary>
public static class FitDecoder
{
    private const int GzipLayers = 2;

    /// <summary>Decodes a whole file.</summary>
    /// <param name="bytes">The file's bytes, as they are or gzip-compressed.</param>
    /// <param name="options">Settings; null for <see cref="FitDecodeOptions.Default"/>.</param>
    /// <returns>The parts and faults; with <see cref="FitFile.Rejection"/> set if the bytes are no FIT file or hold no data.</returns>
    public static FitFile Decode(ReadOnlySpan<byte> bytes, FitDecodeOptions? options = null) =>
        Decode(bytes, options ?? FitDecodeOptions.Default, GzipLayers);

    private static FitFile Decode(ReadOnlySpan<byte> bytes, FitDecodeOptions options, int gzipLayers)
    {
        var kind = FitContent.Sniff(bytes);
        FileDecoder decoder = new(options);
        if (kind == FitContentKind.Fit)
            return decoder.Run(bytes, FitContent.MarkLength(bytes));
        if (kind == FitContentKind.Gzip && gzipLayers > 0)
            return DecodeInflated(bytes, options, gzipLayers);
        return decoder.Unusable(Reject(bytes, kind));
    }

    private static FitFile DecodeInflated(ReadOnlySpan<byte> bytes, FitDecodeOptions options, int gzipLayers)
    {
        var outcome = GzipInflater.Inflate(bytes, options.MaxInflatedBytes, out var inflated);
        if (outcome == GzipInflater.Outcome.TooLarge)
            return new FileDecoder(options).Unusable(new FitRejection(FitRejectionReason.NotFit, FitContentKind.Gzip, bytes.Length, $"this gzip file inflates to more than {options.MaxInflatedBytes} bytes"));
        if (inflated.Length == 0)
            return new FileDecoder(options).Unusable(new FitRejection(FitRejectionReason.NotFit, FitContentKind.Gzip, 0, "this gzip file is damaged from its beginning"));
        return Decode(inflated, options, gzipLayers - 1);
    }

    private static FitRejection Reject(ReadOnlySpan<byte> bytes, FitContentKind kind)
    {
        if (kind == FitContentKind.Empty)
            return new FitRejection(FitRejectionReason.NoData, kind, 0, "this file is empty");
        var isCutHeader = bytes.Length < FitConstants.ShortHeaderSize && bytes[0] is FitConstants.ShortHeaderSize or FitConstants.HeaderSize;
        if (isCutHeader && bytes.Length < FitConstants.HeaderSize)
            return new FitRejection(FitRejectionReason.NoData, FitContentKind.Fit, bytes.Length, "this file ends inside its header");
        return new FitRejection(FitRejectionReason.NotFit, kind, 0, $"this is {FitContent.Describe(kind)}, not a FIT file");
    }
}
