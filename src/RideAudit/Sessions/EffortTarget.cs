using RideAudit.Plan.Blocks;

namespace RideAudit.Sessions;

/// <summary>An effort in what the rider has.</summary>
/// <param name="In">What it is told in.</param>
/// <param name="Low">Lower end: W, bpm or feel 0 to 10; 0 for none.</param>
/// <param name="High">Upper end.</param>
internal readonly record struct EffortTarget(EffortTarget.Unit In, double Low, double High)
{
    // Common practice, no source: of repeats none is told to be all there is, for there is another one to come.
    private const double MostOfShort = 9;

    /// <summary>What a target is told in.</summary>
    public enum Unit
    {
        /// <summary>No target: as hard as it goes.</summary>
        None,

        /// <summary>W.</summary>
        Watts,

        /// <summary>bpm.</summary>
        Beats,

        /// <summary>Feel from 0 to 10.</summary>
        Feel,
    }

    /// <summary>The target of an effort.</summary>
    /// <remarks>A share of threshold power becomes beats only where it is held long enough for the heart to follow; a share of threshold heart rate never becomes watts.</remarks>
    /// <param name="seconds">How long it is held, s.</param>
    /// <param name="measures">What the rider knows.</param>
    public static EffortTarget Of(Effort effort, int seconds, SessionMeasures measures)
    {
        if (effort.Measure == EffortMeasure.AllOut)
            return default;
        if (effort.Measure == EffortMeasure.Feel)
            return new EffortTarget(Unit.Feel, effort.From, effort.To);
        var (from, to) = EffortShares.RangeOf(effort, seconds);
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        if (effort.Measure == EffortMeasure.HeartRateShare)
        {
            return measures.HeartRateBpm is { } threshold
                ? new EffortTarget(Unit.Beats, threshold * low / 100, threshold * high / 100)
                : new EffortTarget(Unit.Feel, EffortShares.FeelBeside(low), EffortShares.FeelBeside(high));
        }
        if (measures.Power is { } watts)
            return new EffortTarget(Unit.Watts, watts.Value * low / 100, watts.Value * high / 100);
        if (measures.HeartRateBpm is { } bpm && (seconds >= SessionWords.HeartRateNeeds || EffortShares.IsEasy(effort)))
            return new EffortTarget(Unit.Beats, bpm * EffortShares.HeartRateBeside(low) / 100, bpm * EffortShares.HeartRateBeside(high) / 100);
        // A minute well above threshold is over before it feels as the same power held does.
        var most = seconds < SessionWords.HeartRateNeeds ? MostOfShort : 10;
        return new EffortTarget(Unit.Feel, Math.Min(EffortShares.FeelOf(low), most - 1), Math.Min(EffortShares.FeelOf(high), most));
    }
}
