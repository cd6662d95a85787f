namespace RideAudit.Fit.Reading;

/// <summary>What is left of the caps for one whole file.</summary>
internal sealed class DecodeBudget(FitDecodeOptions options, int fileLength)
{
    public int Records { get; set; } = options.MaxRecords;

    public int OtherMessages { get; set; } = options.MaxOtherMessages;

    /// <summary>Bytes that may still be searched for a place where the stream makes sense again; keeps the whole effort linear in the file's length.</summary>
    public long SearchBytes { get; set; } = 4L * fileLength;

    public DecodeBudget Copy() => (DecodeBudget)MemberwiseClone();
}
