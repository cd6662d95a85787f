namespace RideAudit.Plan;

/// <summary>Every number that the kinds and the rules use. Defaults are common practice unless the rule's page cites a source; each can be overridden by name in the rider file.</summary>
/// <remarks>Shares and margins are fractions (0.15 is 15 %); percents of threshold power are in the name.</remarks>
public sealed record Limits
{
    /// <summary>High days at most in a week.</summary>
    public int HighDaysAtMost { get; init; } = 2;

    /// <summary>Threshold days on top of the high days.</summary>
    public int ThresholdDaysOnTop { get; init; } = 1;

    /// <summary>Length of the long ride, h.</summary>
    public double LongRideHours { get; init; } = 2.5;

    /// <summary>Rest or recovery days at least.</summary>
    public int RestDaysAtLeast { get; init; } = 2;

    /// <summary>Intended low share, by time.</summary>
    public double IntendedLowShare { get; init; } = 0.75;

    /// <summary>Tolerance around the intended low share.</summary>
    public double SplitTolerance { get; init; } = 0.07;

    /// <summary>Sustained work at or above this is high, % of threshold power.</summary>
    public double HighSharePercent { get; init; } = 91;

    /// <summary>Sustained high work that makes a ride high, min.</summary>
    public double HighMinutes { get; init; } = 10;

    /// <summary>Least share of powered time for a high ride.</summary>
    public double HighLeastShare { get; init; } = 0.05;

    /// <summary>Work at or above this counts second by second, % of threshold power.</summary>
    public double AboveThresholdSharePercent { get; init; } = 106;

    /// <summary>Such work that makes a ride high, min.</summary>
    public double AboveThresholdMinutes { get; init; } = 6;

    /// <summary>Sustained work at or above this is around threshold, % of threshold power.</summary>
    public double ThresholdSharePercent { get; init; } = 84;

    /// <summary>Such work that makes a ride a threshold ride, min.</summary>
    public double ThresholdMinutes { get; init; } = 10;

    /// <summary>Least share of powered time for a threshold ride.</summary>
    public double ThresholdLeastShare { get; init; } = 0.10;

    /// <summary>Middle and high share that makes a ride a threshold ride.</summary>
    public double MixedShare { get; init; } = 0.25;

    /// <summary>Least length of a ride that <see cref="MixedShare"/> applies to, min.</summary>
    public double MixedLeastMinutes { get; init; } = 30;

    /// <summary>Least low share of a long ride.</summary>
    public double LongRideLowShare { get; init; } = 0.75;

    /// <summary>A recovery ride is at most this long, min.</summary>
    public double RecoveryMinutes { get; init; } = 75;

    /// <summary>A recovery ride's normalised power at most, % of threshold power.</summary>
    public double RecoveryPowerPercent { get; init; } = 60;

    /// <summary>Heart-rate bands: lower cut, % of threshold heart rate.</summary>
    public double HeartRateLowerCutPercent { get; init; } = 90;

    /// <summary>Heart-rate bands: upper cut, % of threshold heart rate.</summary>
    public double HeartRateUpperCutPercent { get; init; } = 95;

    /// <summary>A recovery ride's mean heart rate at most, % of threshold heart rate.</summary>
    public double RecoveryHeartRatePercent { get; init; } = 75;
}
