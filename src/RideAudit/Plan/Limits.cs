using RideAudit.Formatting;
using RideAudit.Units;

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

    /// <summary>Recordings at most this far apart are one ride, min.</summary>
    public double JoinGapMinutes { get; init; } = 60;

    /// <summary>A ride shorter than this has no kind, min.</summary>
    public double KindLeastMinutes { get; init; } = 10;

    /// <summary>Sustained work at or above this is high, % of threshold power.</summary>
    public double HighSharePercent { get; init; } = 105;

    /// <summary>Such work that makes a ride high, min.</summary>
    public double HighMinutes { get; init; } = 5;

    /// <summary>Short efforts at or above this are bouts, % of threshold power.</summary>
    public double BoutSharePercent { get; init; } = 120;

    /// <summary>Shorter efforts are no bouts, s.</summary>
    public double BoutLeastSeconds { get; init; } = 8;

    /// <summary>Bouts that may make a ride high.</summary>
    public int BoutsAtLeast { get; init; } = 5;

    /// <summary>Time in bouts that may make a ride high, min.</summary>
    public double BoutsMinutes { get; init; } = 2;

    /// <summary>Least intensity ratio of a ride that bouts make high.</summary>
    public double BoutsRatio { get; init; } = 0.75;

    /// <summary>Sustained work at or above this is close to threshold, % of threshold power.</summary>
    public double NearThresholdSharePercent { get; init; } = 91;

    /// <summary>Such work on two threshold days in a row that is as much as two high days, min.</summary>
    public double NearThresholdMinutes { get; init; } = 40;

    /// <summary>Sustained work at or above this is around threshold, % of threshold power.</summary>
    public double ThresholdSharePercent { get; init; } = 84;

    /// <summary>Such work that makes a ride a threshold ride, min.</summary>
    public double ThresholdMinutes { get; init; } = 10;

    /// <summary>Least share of powered time for a threshold ride.</summary>
    public double ThresholdLeastShare { get; init; } = 0.10;

    /// <summary>Intensity ratio that makes a ride a threshold ride.</summary>
    public double ThresholdRatio { get; init; } = 0.80;

    /// <summary>Least length of a ride that <see cref="ThresholdRatio"/> applies to, min.</summary>
    public double ThresholdRatioMinutes { get; init; } = 30;

    /// <summary>Share of the long-ride length from which a ride is as long as it.</summary>
    public double LongRideLengthShare { get; init; } = 0.95;

    /// <summary>Least low share of a long ride.</summary>
    public double LongRideLowShare { get; init; } = 0.67;

    /// <summary>Least low share of a ride that is long enough whatever its kind.</summary>
    public double LongEnoughLowShare { get; init; } = 0.60;

    /// <summary>A recovery ride is at most this long, min.</summary>
    public double RecoveryMinutes { get; init; } = 75;

    /// <summary>A recovery ride's normalised power at most, % of threshold power.</summary>
    public double RecoveryPowerPercent { get; init; } = 60;

    /// <summary>Heart-rate bands: lower cut, % of threshold heart rate.</summary>
    public double HeartRateLowerCutPercent { get; init; } = 90;

    /// <summary>Heart-rate bands: upper cut, % of threshold heart rate.</summary>
    public double HeartRateUpperCutPercent { get; init; } = 100;

    /// <summary>Time at or above the upper cut that makes a ride high by heart rate, min.</summary>
    public double HeartRateHighMinutes { get; init; } = 8;

    /// <summary>Time at or above this is around threshold, % of threshold heart rate.</summary>
    public double HeartRateThresholdPercent { get; init; } = 92;

    /// <summary>Such time that makes a ride a threshold ride by heart rate, min.</summary>
    public double HeartRateThresholdMinutes { get; init; } = 12;

    /// <summary>A recovery ride's mean heart rate at most, % of threshold heart rate.</summary>
    public double RecoveryHeartRatePercent { get; init; } = 75;

    /// <summary>A ride rated this or more is high; an easy ride rated so is remarked on.</summary>
    public double RatingHigh { get; init; } = 7;

    /// <summary>A ride rated this or more is a threshold ride.</summary>
    public double RatingThreshold { get; init; } = 5;

    /// <summary>A short ride rated this or less is a recovery ride.</summary>
    public double RatingRecovery { get; init; } = 2;

    /// <summary>A high ride rated this or less is remarked on.</summary>
    public double RatingEasy { get; init; } = 3;

    /// <summary>Share of the planned hours that the long ride is never asked to exceed.</summary>
    public double LongRideWeekShareAtMost { get; init; } = 0.5;

    /// <summary>Intended share of easy sessions where the split is judged by session; null: not judged by session at this volume.</summary>
    public double? IntendedEasySessionShare { get; init; }

    /// <summary>Rides with a kind that a split by session needs.</summary>
    public int SplitSessionsAtLeast { get; init; } = 5;

    /// <summary>A day of at most this much riding may count as recovery, min.</summary>
    public double ShortDayMinutes { get; init; } = 60;

    /// <summary>Low share that such a day needs.</summary>
    public double ShortDayLowShare { get; init; } = 0.85;

    /// <summary>Other activity of this length makes a day without riding recovery, not rest, min.</summary>
    public double OtherActivityMinutes { get; init; } = 30;

    /// <summary>A hard ride that starts this long or more after the day's hard ride before it is a session of its own, h.</summary>
    public double SecondHardRideHours { get; init; } = 3;

    /// <summary>Hour limits of a lighter week, as a share of the ordinary ones.</summary>
    public double LighterWeekFactor { get; init; } = 0.6;

    /// <summary>Share of hours without a known stress above which a stress rule is not judged.</summary>
    public double StressUnknownShareAtMost { get; init; } = 0.10;

    /// <summary>Weeks before the judged one that planned hours are the mean of, when the rider file gives none.</summary>
    public int PlannedHoursWeeks { get; init; } = 6;

    /// <summary>Two days in a row are heavy from this much stress on, points.</summary>
    public double HeavyPairStress { get; init; } = 100;

    /// <summary>Two days in a row are heavy from this share of the mean weekly stress on.</summary>
    public double HeavyPairWeekShare { get; init; } = 0.40;

    /// <summary>How far a ride may fall short of the long-ride length and still be near it.</summary>
    public double LongRideMargin { get; init; } = 0.20;

    /// <summary>How far low-band hours may fall short of those asked.</summary>
    public double EnduranceMargin { get; init; } = 0.15;

    /// <summary>Hours off the plan by more than this are worth a look.</summary>
    public double HoursWatchMargin { get; init; } = 0.15;

    /// <summary>Hours off the plan by more than this break the rule.</summary>
    public double HoursBrokenMargin { get; init; } = 0.30;

    /// <summary>A rise in chronic load above this is worth a look, points a week.</summary>
    public double RampWatch { get; init; } = 5;

    /// <summary>A rise in chronic load above this breaks the rule, points a week.</summary>
    public double RampBroken { get; init; } = 8;

    /// <summary>Hours above this multiple of the mean of ordinary weeks are worth a look.</summary>
    public double GrowthRatio { get; init; } = 1.3;

    /// <summary>Ordinary weeks that growth is measured against.</summary>
    public int GrowthWeeks { get; init; } = 4;

    /// <summary>A ride above this multiple of the longest before it is worth a look.</summary>
    public double JumpRatio { get; init; } = 1.3;

    /// <summary>Shorter rides never jump, min.</summary>
    public double JumpLeastMinutes { get; init; } = 90;

    /// <summary>Days before a ride that its length is measured against.</summary>
    public int JumpDays { get; init; } = 30;

    /// <summary>Hours have grown when they exceed the mean of ordinary weeks by more than this.</summary>
    public double GrowthShare { get; init; } = 0.10;

    /// <summary>Share of the added time that may be above low.</summary>
    public double GrowthAboveLowShare { get; init; } = 1.0 / 3;

    /// <summary>Easy rides shorter than this are not looked at, min.</summary>
    public double EasyLeastMinutes { get; init; } = 30;

    /// <summary>Intensity ratio of an easy ride above which it is worth a look.</summary>
    public double EasyWatchRatio { get; init; } = 0.76;

    /// <summary>Intensity ratio of an easy ride above which it breaks the rule.</summary>
    public double EasyBrokenRatio { get; init; } = 0.80;

    /// <summary>Sustained work around threshold in an easy ride above which it is worth a look, min.</summary>
    public double EasyWatchMinutes { get; init; } = 6;

    /// <summary>Sustained work around threshold in an easy ride above which it breaks the rule, min.</summary>
    public double EasyBrokenMinutes { get; init; } = 10;

    /// <summary>A week is lighter when its hours are at most this share of the mean of the others.</summary>
    public double LighterWeekShare { get; init; } = 0.75;

    /// <summary>Weeks, the judged one included, that should hold a lighter one.</summary>
    public int LighterWatchWeeks { get; init; } = 4;

    /// <summary>Weeks, the judged one included, that must hold a lighter one.</summary>
    public int LighterBrokenWeeks { get; init; } = 6;

    /// <summary>Monotony above this is worth a look.</summary>
    public double MonotonyWatch { get; init; } = 1.5;

    /// <summary>Monotony above this breaks the rule.</summary>
    public double MonotonyBroken { get; init; } = 2.0;

    /// <summary>Monotony is judged from this much stress in the week on, points.</summary>
    public double MonotonyLeastStress { get; init; } = 200;

    /// <summary>Hard days from which a week asks for the long ride first.</summary>
    public int LongRideFirstHardDays { get; init; } = 3;

    /// <summary>Ill or away days in a row from which coming back is looked at.</summary>
    public int ReturnDaysOut { get; init; } = 3;

    /// <summary>Ill or away days in a row that make a long absence.</summary>
    public int ReturnLongDaysOut { get; init; } = 7;

    /// <summary>First days back after illness without a high day.</summary>
    public int ReturnIllDays { get; init; } = 3;

    /// <summary>First days back after another long absence without a high day.</summary>
    public int ReturnAwayDays { get; init; } = 2;

    /// <summary>Share of the usual hours that the first seven days back after a long absence hold at most.</summary>
    public double ReturnHoursShare { get; init; } = 0.70;

    /// <summary>How far 95 % of a best 20 minutes may exceed the threshold in force.</summary>
    public double FreshMargin { get; init; } = 0.05;

    /// <summary>Days that such a best 20 minutes is looked for in.</summary>
    public int FreshDays { get; init; } = 42;

    /// <summary>Intensity ratio of a hard ride ridden easy instead.</summary>
    public double EasedRatio { get; init; } = 0.65;

    /// <summary>The low tier reaches up to this, h a week.</summary>
    public double LowTierHours { get; init; } = 5;

    /// <summary>The middle tier reaches up to this, h a week.</summary>
    public double MiddleTierHours { get; init; } = 8;

    /// <summary>The high tier reaches up to this, h a week.</summary>
    public double HighTierHours { get; init; } = 15;

    /// <summary>The limits for a tier and a rider, with the rider file's own in place of the defaults.</summary>
    /// <param name="tier">The tier; null: kinds are told by the middle tier's long ride, and rules that need a tier are not judged.</param>
    /// <param name="experience">The rider's experience.</param>
    /// <param name="plannedHours">Planned hours, h; null when unknown.</param>
    /// <param name="plan">The plan, for its low share and its limits by name.</param>
    /// <exception cref="ArgumentException">The plan overrides a limit of a name that there is not.</exception>
    public static Limits For(Tier? tier, Experience experience, double? plannedHours, TrainingPlan plan)
    {
        var limits = TierDefaults.For(tier ?? Tier.Middle, experience);
        if (plan.LowShare is { } share)
            limits = limits with { IntendedLowShare = share };
        limits = LimitCatalogue.Override(limits, plan.LimitOverrides);
        if (tier == Tier.Low && limits.HighDaysAtMost >= 3 && !plan.LimitOverrides.ContainsKey("threshold_days_on_top"))
            limits = limits with { ThresholdDaysOnTop = 0 };
        return plannedHours is { } hours && !plan.LimitOverrides.ContainsKey("long_ride_h")
            ? limits with { LongRideHours = Math.Min(limits.LongRideHours, limits.LongRideWeekShareAtMost * hours) }
            : limits;
    }

    /// <summary>The tier that planned hours fall in.</summary>
    /// <remarks>Hours count as they are shown, to a tenth: a mean of past weeks of 5.02 h is 5 h.</remarks>
    /// <param name="plannedHours">Planned hours a week, h.</param>
    public Tier TierOf(double plannedHours) =>
        IsUpTo(plannedHours, LowTierHours) ? Tier.Low
        : IsUpTo(plannedHours, MiddleTierHours) ? Tier.Middle
        : IsUpTo(plannedHours, HighTierHours) ? Tier.High
        : Tier.VeryHigh;

    private static bool IsUpTo(double hours, double limit) => !Close.Above(hours.To(1), limit);
}
