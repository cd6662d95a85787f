namespace RideAudit.Fit;

/// <summary>Settings of one decode. The caps keep a hostile file from taking more memory than an honest one could need.</summary>
public sealed record FitDecodeOptions
{
    /// <summary>The settings used when none are given: tolerant, with the default caps.</summary>
    public static FitDecodeOptions Default { get; } = new();

    /// <summary>How much damage to put up with. Default: <see cref="DamageTolerance.Tolerant"/>.</summary>
    public DamageTolerance Tolerance { get; init; } = DamageTolerance.Tolerant;

    /// <summary>Which channels are read of records; the others are missing throughout. Default: all.</summary>
    public FitChannels Channels { get; init; } = FitChannels.All;

    /// <summary>Records kept in the whole file, at most; further ones are dropped and reported. Default 5,000,000 (58 days at one a second).</summary>
    public int MaxRecords { get; init; } = 5_000_000;

    /// <summary>Messages other than records that are kept in the whole file, at most. Default 1,000,000.</summary>
    public int MaxOtherMessages { get; init; } = 1_000_000;

    /// <summary>Parts (chained files) that are read, at most. Default 1,000.</summary>
    public int MaxParts { get; init; } = 1_000;

    /// <summary>Faults that are listed, at most; further ones are only counted. Default 1,000.</summary>
    public int MaxListedFaults { get; init; } = 1_000;

    /// <summary>Bytes a gzip-compressed file may inflate to, at most. Default 256 MiB.</summary>
    public int MaxInflatedBytes { get; init; } = 256 << 20;
}
