using System.Collections.Immutable;
using System.Text.Json.Serialization;
using NodaTime;
using RideAudit.Document.Converters;

namespace RideAudit.Document;

/// <summary>What the season says of whether the rider improves. It drives no verdict.</summary>
public sealed record ProgressEntry
{
    /// <summary>Heart rate at which easy power is compared, bpm: the middle one of the season's steady easy stretches; null without any.</summary>
    [JsonConverter(typeof(Rounded.To0))]
    public double? EasyHeartRateBpm { get; init; }

    /// <summary>Mean power near that heart rate in the steady parts of easy rides, W, a ride each, oldest first.</summary>
    public ImmutableArray<Figure> EasyPowerW { get; init; } = [];

    /// <summary>Heart-rate drift of long rides, %, oldest first.</summary>
    public ImmutableArray<Figure> LongRideDriftPercent { get; init; } = [];

    /// <summary>Best mean powers by blocks of six weeks that end with the reviewed week, oldest first; blocks without power left out.</summary>
    public ImmutableArray<BestsOfBlock> Bests { get; init; } = [];

    /// <summary>The day the threshold power in force was set or last shown; null without one.</summary>
    public LocalDate? ThresholdEvidenceOn { get; init; }

    /// <summary>Days from then to the week's last day; null without one.</summary>
    public int? ThresholdEvidenceDays { get; init; }

    /// <summary>The evidence is older than six weeks: time to test again. Common practice, no source.</summary>
    public bool TestThreshold { get; init; }

    /// <summary>Easy power in words.</summary>
    public Told EasyPower { get; init; } = Told.Nothing;

    /// <summary>Drift in words.</summary>
    public Told Drift { get; init; } = Told.Nothing;

    /// <summary>Bests in words.</summary>
    public Told Best { get; init; } = Told.Nothing;

    /// <summary>Threshold power and how old its evidence is, in words.</summary>
    public Told Threshold { get; init; } = Told.Nothing;

    /// <summary>What a series comes to, and why not to lean on it too much.</summary>
    /// <param name="Sentence">One sentence; fewer than three points claim nothing.</param>
    /// <param name="Caution">One sentence.</param>
    public sealed record Told(string Sentence, string Caution)
    {
        /// <summary>Nothing to say.</summary>
        public static Told Nothing { get; } = new("", "");
    }

    /// <summary>A figure of one ride.</summary>
    /// <param name="Date">Its day.</param>
    /// <param name="Value">The unrounded figure.</param>
    /// <param name="File">The ride.</param>
    public readonly record struct Figure(LocalDate Date, [property: JsonConverter(typeof(Rounded.To1))] double Value, string File);

    /// <summary>The bests of six weeks against all before them.</summary>
    /// <param name="StartsOn">The block's first day.</param>
    /// <param name="Bests">One a window, shortest first.</param>
    public sealed record BestsOfBlock(LocalDate StartsOn, ImmutableArray<BestOfBlock> Bests)
    {
        /// <summary>Length of a block, days.</summary>
        public const int Days = 42;

        /// <summary>The block's last day.</summary>
        [JsonIgnore]
        public LocalDate EndsOn => StartsOn.PlusDays(Days - 1);
    }

    /// <summary>The best of one window.</summary>
    /// <param name="Seconds">The window, s: 60, 300 or 1200.</param>
    /// <param name="MeanPowerW">Mean power over it, W.</param>
    /// <param name="BestBeforeW">The best of every ride before the block, W; null without one.</param>
    public readonly record struct BestOfBlock(
        int Seconds,
        [property: JsonConverter(typeof(Rounded.To1))] double MeanPowerW,
        [property: JsonConverter(typeof(Rounded.To1))] double? BestBeforeW);
}
