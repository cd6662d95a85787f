using System.Collections.Frozen;
using System.Collections.Immutable;

namespace RideAudit.Plan;

/// <summary>Every limit by the name it has in the rider file's <c>[plan.limits]</c>, in the order of the method.</summary>
internal static class LimitCatalogue
{
    /// <summary>The limits.</summary>
    public static ImmutableArray<LimitDefinition> All { get; } =
    [
        Count("high_days_at_most", "days", 0, 7, "high days at most in a week", "high days at most *", l => l.HighDaysAtMost, (l, v) => l with { HighDaysAtMost = (int)v }),
        Count("threshold_days_on_top", "days", 0, 7, "threshold days on top of the high days", "threshold days on top *", l => l.ThresholdDaysOnTop, (l, v) => l with { ThresholdDaysOnTop = (int)v }),
        Number("long_ride_h", "h", 0.5, 12, "length of the long ride", "long ride #", l => l.LongRideHours, (l, v) => l with { LongRideHours = v }),
        Number("long_ride_week_share_at_most", "share", 0.1, 1, "share of the planned hours that the long ride is never asked to exceed", "long ride at most # of the planned hours", l => l.LongRideWeekShareAtMost, (l, v) => l with { LongRideWeekShareAtMost = v }),
        Count("rest_days_at_least", "days", 0, 7, "rest or recovery days at least", "rest or recovery days at least *", l => l.RestDaysAtLeast, (l, v) => l with { RestDaysAtLeast = (int)v }),
        Number("intended_low_share", "share", 0.3, 1, "intended low share, by time", "intended low share #", l => l.IntendedLowShare, (l, v) => l with { IntendedLowShare = v }),
        Number("split_tolerance", "share", 0.01, 0.3, "tolerance around the intended share", "give or take # of the whole", l => l.SplitTolerance, (l, v) => l with { SplitTolerance = v }),
        Number("intended_easy_session_share", "share", 0.3, 1, "intended share of easy sessions, where the split is judged by session", "intended share of easy sessions #", l => l.IntendedEasySessionShare, (l, v) => l with { IntendedEasySessionShare = v }),
        Count("split_sessions_at_least", "rides", 1, 20, "rides that a split by session needs", "sessions at least *", l => l.SplitSessionsAtLeast, (l, v) => l with { SplitSessionsAtLeast = (int)v }),
        Number("join_gap_min", "min", 0, 240, "recordings at most this far apart are one ride", "recordings at most # apart are one ride", l => l.JoinGapMinutes, (l, v) => l with { JoinGapMinutes = v }),
        Number("kind_least_min", "min", 0, 60, "a ride shorter than this has no kind", "a ride has a kind from # on", l => l.KindLeastMinutes, (l, v) => l with { KindLeastMinutes = v }),
        Number("high_share_percent", "%", 50, 150, "sustained work from here on is high, % of threshold power", "high from # of threshold power on", l => l.HighSharePercent, (l, v) => l with { HighSharePercent = v }),
        Number("high_min", "min", 1, 120, "such work that makes a ride high", "a high ride has at least # of high work", l => l.HighMinutes, (l, v) => l with { HighMinutes = v }),
        Number("bout_share_percent", "%", 80, 300, "short efforts from here on are bouts, % of threshold power", "short efforts count from # of threshold power on", l => l.BoutSharePercent, (l, v) => l with { BoutSharePercent = v }),
        Number("bout_least_s", "s", 1, 120, "shorter efforts are no bouts", "a short effort lasts at least #", l => l.BoutLeastSeconds, (l, v) => l with { BoutLeastSeconds = v }),
        Count("bouts_at_least", "bouts", 1, 100, "bouts that may make a ride high", "a high ride may have at least * short efforts", l => l.BoutsAtLeast, (l, v) => l with { BoutsAtLeast = (int)v }),
        Number("bouts_min", "min", 0, 60, "time in bouts that may make a ride high", "of # in all", l => l.BoutsMinutes, (l, v) => l with { BoutsMinutes = v }),
        Number("bouts_ratio", "times", 0, 1.5, "least intensity ratio of a ride that bouts make high", "at an intensity ratio of at least #", l => l.BoutsRatio, (l, v) => l with { BoutsRatio = v }),
        Number("near_threshold_share_percent", "%", 50, 150, "sustained work from here on is close to threshold, % of threshold power", "close to threshold from # of threshold power on", l => l.NearThresholdSharePercent, (l, v) => l with { NearThresholdSharePercent = v }),
        Number("near_threshold_min", "min", 1, 240, "such work on two threshold days in a row that is as much as two high days", "two threshold days with # of it are like two high days", l => l.NearThresholdMinutes, (l, v) => l with { NearThresholdMinutes = v }),
        Number("threshold_share_percent", "%", 50, 120, "sustained work from here on is around threshold, % of threshold power", "around threshold from # of threshold power on", l => l.ThresholdSharePercent, (l, v) => l with { ThresholdSharePercent = v }),
        Number("threshold_min", "min", 1, 120, "such work that makes a ride a threshold ride", "a threshold ride has at least # around threshold", l => l.ThresholdMinutes, (l, v) => l with { ThresholdMinutes = v }),
        Number("threshold_least_share", "share", 0, 1, "least share of powered time for a threshold ride", "work around threshold is at least # of powered time", l => l.ThresholdLeastShare, (l, v) => l with { ThresholdLeastShare = v }),
        Number("threshold_ratio", "times", 0.5, 1.5, "intensity ratio that makes a ride a threshold ride", "a threshold ride may have an intensity ratio of at least #", l => l.ThresholdRatio, (l, v) => l with { ThresholdRatio = v }),
        Number("threshold_ratio_min", "min", 0, 240, "least length of a ride that this ratio applies to", "over at least #", l => l.ThresholdRatioMinutes, (l, v) => l with { ThresholdRatioMinutes = v }),
        Number("long_ride_length_share", "share", 0.5, 1, "share of the long-ride length from which a ride is as long as it", "a ride counts as long from # of that length on", l => l.LongRideLengthShare, (l, v) => l with { LongRideLengthShare = v }),
        Number("long_ride_low_share", "share", 0.3, 1, "least low share of a long ride", "at least # of it low", l => l.LongRideLowShare, (l, v) => l with { LongRideLowShare = v }),
        Number("long_enough_low_share", "share", 0.3, 1, "least low share of a ride that is long enough whatever its kind", "long enough with at least # of it low", l => l.LongEnoughLowShare, (l, v) => l with { LongEnoughLowShare = v }),
        Number("recovery_min", "min", 10, 240, "a recovery ride is at most this long", "a recovery ride is at most # long", l => l.RecoveryMinutes, (l, v) => l with { RecoveryMinutes = v }),
        Number("recovery_power_percent", "%", 30, 90, "a recovery ride’s normalised power at most, % of threshold power", "a recovery ride is at most # of threshold power", l => l.RecoveryPowerPercent, (l, v) => l with { RecoveryPowerPercent = v }),
        Number("heart_rate_lower_cut_percent", "%", 50, 120, "heart-rate bands: lower cut, % of threshold heart rate", "low below # of threshold heart rate", l => l.HeartRateLowerCutPercent, (l, v) => l with { HeartRateLowerCutPercent = v }),
        Number("heart_rate_upper_cut_percent", "%", 50, 120, "heart-rate bands: upper cut, % of threshold heart rate", "high from # of threshold heart rate on", l => l.HeartRateUpperCutPercent, (l, v) => l with { HeartRateUpperCutPercent = v }),
        Number("heart_rate_high_min", "min", 1, 120, "time at or above the upper cut that makes a ride high by heart rate", "a high ride by heart rate has at least # of high work", l => l.HeartRateHighMinutes, (l, v) => l with { HeartRateHighMinutes = v }),
        Number("heart_rate_threshold_percent", "%", 50, 120, "time from here on is around threshold, % of threshold heart rate", "around threshold from # of threshold heart rate on", l => l.HeartRateThresholdPercent, (l, v) => l with { HeartRateThresholdPercent = v }),
        Number("heart_rate_threshold_min", "min", 1, 120, "such time that makes a ride a threshold ride by heart rate", "a threshold ride by heart rate has at least # of it", l => l.HeartRateThresholdMinutes, (l, v) => l with { HeartRateThresholdMinutes = v }),
        Number("recovery_heart_rate_percent", "%", 40, 100, "a recovery ride’s mean heart rate at most, % of threshold heart rate", "a recovery ride is at most # of threshold heart rate", l => l.RecoveryHeartRatePercent, (l, v) => l with { RecoveryHeartRatePercent = v }),
        Number("rating_high", "points", 0, 10, "a ride rated this or more is high; an easy ride rated so is remarked on", "rated # or more is high", l => l.RatingHigh, (l, v) => l with { RatingHigh = v }),
        Number("rating_threshold", "points", 0, 10, "a ride rated this or more is a threshold ride", "rated # or more is a threshold ride", l => l.RatingThreshold, (l, v) => l with { RatingThreshold = v }),
        Number("rating_recovery", "points", 0, 10, "a short ride rated this or less is a recovery ride", "rated # or less is recovery where short", l => l.RatingRecovery, (l, v) => l with { RatingRecovery = v }),
        Number("rating_easy", "points", 0, 10, "a high ride rated this or less is remarked on", "a high ride rated # or less is remarked on", l => l.RatingEasy, (l, v) => l with { RatingEasy = v }),
        Number("short_day_min", "min", 0, 240, "a day of at most this much riding may count as recovery", "a short day holds at most #", l => l.ShortDayMinutes, (l, v) => l with { ShortDayMinutes = v }),
        Number("short_day_low_share", "share", 0, 1, "low share that such a day needs", "at least # of a short day is low", l => l.ShortDayLowShare, (l, v) => l with { ShortDayLowShare = v }),
        Number("other_activity_min", "min", 1, 240, "other activity of this length makes a day without riding recovery, not rest", "other activity counts from # on", l => l.OtherActivityMinutes, (l, v) => l with { OtherActivityMinutes = v }),
        Number("second_hard_ride_h", "h", 0, 24, "a hard ride this long or more after the day’s hard ride before it is a session of its own", "a second hard ride # or more later counts again", l => l.SecondHardRideHours, (l, v) => l with { SecondHardRideHours = v }),
        Number("lighter_week_factor", "times", 0.1, 1, "hour limits of a lighter week, as a share of the ordinary ones", "a lighter week has # times the planned hours", l => l.LighterWeekFactor, (l, v) => l with { LighterWeekFactor = v }),
        Number("stress_unknown_share_at_most", "share", 0, 1, "share of hours without a known stress above which a stress rule is not judged", "hours without a known stress at most #", l => l.StressUnknownShareAtMost, (l, v) => l with { StressUnknownShareAtMost = v }),
        Count("planned_hours_weeks", "weeks", 1, 26, "weeks that planned hours are the mean of, when none are given", "planned hours are the mean of #", l => l.PlannedHoursWeeks, (l, v) => l with { PlannedHoursWeeks = (int)v }),
        Number("heavy_pair_stress", "points", 1, 1000, "two days in a row are heavy from this much stress on", "two days are heavy from # on", l => l.HeavyPairStress, (l, v) => l with { HeavyPairStress = v }),
        Number("heavy_pair_week_share", "share", 0.05, 2, "two days in a row are heavy from this share of the mean weekly stress on", "and from # of a usual week on", l => l.HeavyPairWeekShare, (l, v) => l with { HeavyPairWeekShare = v }),
        Number("long_ride_margin", "share", 0, 1, "how far a ride may fall short of the long-ride length and still be near it", "watch where it is short by at most #", l => l.LongRideMargin, (l, v) => l with { LongRideMargin = v }),
        Number("endurance_margin", "share", 0, 1, "how far low-band hours may fall short of those asked", "short by at most #", l => l.EnduranceMargin, (l, v) => l with { EnduranceMargin = v }),
        Number("hours_watch_margin", "share", 0, 1, "hours off the plan by more than this are worth a look", "watch beyond # off the plan", l => l.HoursWatchMargin, (l, v) => l with { HoursWatchMargin = v }),
        Number("hours_broken_margin", "share", 0, 1, "hours off the plan by more than this break the rule", "broken beyond # off the plan", l => l.HoursBrokenMargin, (l, v) => l with { HoursBrokenMargin = v }),
        Number("ramp_watch", "points", 0, 50, "a rise in chronic load in a week above this is worth a look", "watch above a rise of #", l => l.RampWatch, (l, v) => l with { RampWatch = v }),
        Number("ramp_broken", "points", 0, 50, "a rise in chronic load in a week above this breaks the rule", "broken above a rise of #", l => l.RampBroken, (l, v) => l with { RampBroken = v }),
        Number("growth_ratio", "times", 1, 5, "hours above this multiple of the mean of ordinary weeks are worth a look", "watch above # times the mean", l => l.GrowthRatio, (l, v) => l with { GrowthRatio = v }),
        Count("growth_weeks", "weeks", 1, 12, "ordinary weeks that growth is measured against", "the mean is of #", l => l.GrowthWeeks, (l, v) => l with { GrowthWeeks = (int)v }),
        Number("jump_ratio", "times", 1, 5, "a ride above this multiple of the longest before it is worth a look", "watch above # times the longest before", l => l.JumpRatio, (l, v) => l with { JumpRatio = v }),
        Number("jump_least_min", "min", 0, 600, "shorter rides never jump", "looks at rides of at least #", l => l.JumpLeastMinutes, (l, v) => l with { JumpLeastMinutes = v }),
        Count("jump_days", "days", 7, 120, "days before a ride that its length is measured against", "looks back #", l => l.JumpDays, (l, v) => l with { JumpDays = (int)v }),
        Number("growth_share", "share", 0, 2, "hours have grown when they exceed the mean of ordinary weeks by more than this", "hours have grown beyond #", l => l.GrowthShare, (l, v) => l with { GrowthShare = v }),
        Number("growth_above_low_share", "share", 0, 1, "share of the added time that may be above low", "at most # of the added time above low", l => l.GrowthAboveLowShare, (l, v) => l with { GrowthAboveLowShare = v }),
        Number("easy_least_min", "min", 10, 240, "easy rides shorter than this are not looked at", "looks at rides of at least #", l => l.EasyLeastMinutes, (l, v) => l with { EasyLeastMinutes = v }),
        Number("easy_watch_ratio", "times", 0, 1.5, "intensity ratio of an easy ride above which it is worth a look", "watch above an intensity ratio of #", l => l.EasyWatchRatio, (l, v) => l with { EasyWatchRatio = v }),
        Number("easy_broken_ratio", "times", 0, 1.5, "intensity ratio of an easy ride above which it breaks the rule", "broken above a ratio of #", l => l.EasyBrokenRatio, (l, v) => l with { EasyBrokenRatio = v }),
        Number("easy_watch_min", "min", 0, 240, "sustained work around threshold in an easy ride above which it is worth a look", "watch above # around threshold", l => l.EasyWatchMinutes, (l, v) => l with { EasyWatchMinutes = v }),
        Number("easy_broken_min", "min", 0, 240, "sustained work around threshold in an easy ride above which it breaks the rule", "broken above # of it", l => l.EasyBrokenMinutes, (l, v) => l with { EasyBrokenMinutes = v }),
        Number("lighter_week_share", "share", 0.1, 1, "a week is lighter when its hours are at most this share of the mean of the others", "a lighter week has at most # of the others", l => l.LighterWeekShare, (l, v) => l with { LighterWeekShare = v }),
        Count("lighter_watch_weeks", "weeks", 2, 26, "weeks, the judged one included, that should hold a lighter one", "watch where none of # is lighter", l => l.LighterWatchWeeks, (l, v) => l with { LighterWatchWeeks = (int)v }),
        Count("lighter_broken_weeks", "weeks", 2, 26, "weeks, the judged one included, that must hold a lighter one", "broken where none of # is lighter", l => l.LighterBrokenWeeks, (l, v) => l with { LighterBrokenWeeks = (int)v }),
        Number("monotony_watch", "times", 0.1, 10, "monotony above this is worth a look", "watch above #", l => l.MonotonyWatch, (l, v) => l with { MonotonyWatch = v }),
        Number("monotony_broken", "times", 0.1, 10, "monotony above this breaks the rule", "broken above #", l => l.MonotonyBroken, (l, v) => l with { MonotonyBroken = v }),
        Number("monotony_least_stress", "points", 0, 2000, "monotony is judged from this much stress in the week on", "looks at weeks of at least #", l => l.MonotonyLeastStress, (l, v) => l with { MonotonyLeastStress = v }),
        Count("long_ride_first_hard_days", "days", 1, 7, "hard days from which a week asks for the long ride first", "hard days that ask for it *", l => l.LongRideFirstHardDays, (l, v) => l with { LongRideFirstHardDays = (int)v }),
        Count("return_days_out", "days", 1, 28, "ill or away days in a row from which coming back is looked at", "looks at the return from # out", l => l.ReturnDaysOut, (l, v) => l with { ReturnDaysOut = (int)v }),
        Count("return_long_days_out", "days", 1, 56, "ill or away days in a row that make a long absence", "a long absence is # or more", l => l.ReturnLongDaysOut, (l, v) => l with { ReturnLongDaysOut = (int)v }),
        Count("return_ill_days", "days", 0, 7, "first days back after illness without a high day", "no high day in the first # after illness", l => l.ReturnIllDays, (l, v) => l with { ReturnIllDays = (int)v }),
        Count("return_away_days", "days", 0, 7, "first days back after another long absence without a high day", "nor in the first # after another long absence", l => l.ReturnAwayDays, (l, v) => l with { ReturnAwayDays = (int)v }),
        Number("return_hours_share", "share", 0.1, 2, "share of the usual hours that the first seven days back after a long absence hold at most", "at most # of the usual hours after it", l => l.ReturnHoursShare, (l, v) => l with { ReturnHoursShare = v }),
        Number("fresh_margin", "share", 0, 1, "how far 95 % of a best 20 min may exceed the threshold in force", "watch beyond # above the threshold", l => l.FreshMargin, (l, v) => l with { FreshMargin = v }),
        Count("fresh_days", "days", 7, 180, "days that such a best 20 min is looked for in", "looks back #", l => l.FreshDays, (l, v) => l with { FreshDays = (int)v }),
        Number("eased_ratio", "times", 0.3, 0.75, "intensity ratio of a hard ride ridden easy instead", "a ride eased has an intensity ratio of #", l => l.EasedRatio, (l, v) => l with { EasedRatio = v }),
        Number("low_tier_h", "h", 0.5, 60, "the low tier reaches up to this many hours a week", "low volume is up to # a week", l => l.LowTierHours, (l, v) => l with { LowTierHours = v }),
        Number("middle_tier_h", "h", 0.5, 60, "the middle tier reaches up to this many hours a week", "middle volume is up to # a week", l => l.MiddleTierHours, (l, v) => l with { MiddleTierHours = v }),
        Number("high_tier_h", "h", 0.5, 60, "the high tier reaches up to this many hours a week", "high volume is up to # a week", l => l.HighTierHours, (l, v) => l with { HighTierHours = v }),
    ];

    /// <summary>Pairs of limits of which the first must not exceed the second.</summary>
    internal static ImmutableArray<(string Lower, string Upper)> Ordered { get; } =
    [
        ("threshold_share_percent", "near_threshold_share_percent"),
        ("near_threshold_share_percent", "high_share_percent"),
        ("high_share_percent", "bout_share_percent"),
        ("long_enough_low_share", "long_ride_low_share"),
        ("heart_rate_threshold_percent", "heart_rate_upper_cut_percent"),
        ("rating_threshold", "rating_high"),
        ("rating_recovery", "rating_threshold"),
        ("heart_rate_lower_cut_percent", "heart_rate_upper_cut_percent"),
        ("hours_watch_margin", "hours_broken_margin"),
        ("ramp_watch", "ramp_broken"),
        ("easy_watch_ratio", "easy_broken_ratio"),
        ("easy_watch_min", "easy_broken_min"),
        ("return_days_out", "return_long_days_out"),
        ("lighter_watch_weeks", "lighter_broken_weeks"),
        ("monotony_watch", "monotony_broken"),
        ("low_tier_h", "middle_tier_h"),
        ("middle_tier_h", "high_tier_h"),
    ];

    private static readonly FrozenDictionary<string, LimitDefinition> ByName = All.ToFrozenDictionary(d => d.Name, StringComparer.Ordinal);

    /// <summary>The limit of a name; null when there is none.</summary>
    /// <param name="name">snake_case.</param>
    public static LimitDefinition? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>A limit's value.</summary>
    /// <param name="limits">The limits in force.</param>
    /// <returns>Null when the limit is not set at this volume.</returns>
    /// <exception cref="ArgumentException">There is no limit of that name.</exception>
    public static double? ValueOf(Limits limits, string name) => Get(name).Read(limits);

    /// <summary>The limit of a name that there must be.</summary>
    internal static LimitDefinition Get(string name) =>
        Find(name) ?? throw new ArgumentException($"There is no limit named {name}.", nameof(name));

    internal static Limits Override(Limits limits, ImmutableDictionary<string, double> values)
    {
        foreach (var (name, value) in values)
            limits = Get(name).Write(limits, value);
        return limits;
    }

    private static LimitDefinition Number(
        string name, string unit, double least, double most, string meaning, string phrase, Func<Limits, double?> read, Func<Limits, double, Limits> write) =>
        new() { Name = name, Unit = unit, Least = least, Most = most, Meaning = meaning, Phrase = phrase, Read = read, Write = write };

    private static LimitDefinition Count(
        string name, string unit, int least, int most, string meaning, string phrase, Func<Limits, double?> read, Func<Limits, double, Limits> write) =>
        Number(name, unit, least, most, meaning, phrase, read, write) with { Whole = true };
}
