using System.Collections.Immutable;
using System.Text.RegularExpressions;
using NodaTime;
using RideAudit.Figures;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Tests.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Advice;

/// <summary>Does to a week what an advice says, with the figures as they are printed, in every way that the text leaves open.</summary>
internal static class FollowedAdvice
{
    private static readonly (Regex Text, Func<Match, WeekUnderReview, Finding, IEnumerable<WeekUnderReview>> Follow)[] All =
    [
        (Of(@"(?<days>\w+day(?:(?:, | and )\w+day)*) ridden easy\."), (m, w, _) => [Eased(w, w.Week.Rides.Where(r => r.IsHard && Printed.Days(m.Groups["days"].Value, w).Contains(r.Date)))]),
        (Of(@"(?<n>\w+) (?<kind>hard|high) (days?|sessions?) fewer, ridden easy(?: or left out)?\."), Fewer),
        (Of(@"(?<n>\w+) high (days?|sessions?) fewer; around threshold would have been enough\."), (m, w, _) => Sessions.Choose(w, Count(m), high: true).Select(s => Lowered(w, s))),
        (Of(@"(?<n>\w+) high (days?|sessions?) fewer: (?<some>\w+) ridden easy(?: or left out)?, around threshold enough for the rest\."), FewerAndLower),
        (Of(@"(?<n>\w+) hard (days?|sessions?) fewer, (?<some>\w+) of them high, ridden easy(?: or left out)?\."), FewerAndSomeHigh),
        (Of(@"(?<n>\w+) more days? off, or with nothing but a short easy ride\."), MoreDaysOff),
        (Of(@"A day off, or a short easy ride, on (?<days>\w+day(?: or \w+day)*)\."), (m, w, _) => Printed.Days(m.Groups["days"].Value, w).SelectMany(d => Off(w, [d]))),
        (Of(@"(?<len>[\dhmin ]+) more on (?<day>\w+day)(?:’s (?<hour>\d\d:\d\d) ride)?, all of it easy\."), Longer),
        (Of(@"One easy ride of (?<len>[\dhmin ]+)\."), (m, w, _) => w.Week.Days.Select(d => w.And(Easy(d.Date, Length(m) / 60)))),
        (Of(@"One easy ride of (?<len>[\dhmin ]+) in place of other riding\."), (m, w, _) => w.Week.Rides.Select(r => w.Without([r]).And(Easy(r.Date, Length(m) / 60)))),
        (Of(@"Build up to a long easy ride of (?<len>[\dhmin ]+) in steps: (?<next>[\dhmin ]+) would be the next\."), (m, w, _) => w.Week.Days.Select(d => w.And(Easy(d.Date, Length(m) / 60)))),
        (Of(@"The same ride with at least (?<p>\d+) % of it easy\."), EasyEnough),
        (Of(@"A ride of (?<len>[\dhmin ]+), most of it easy, in place of one of the hard rides\."), InPlaceOfAHardRide),
        (Of(@"At least (?<len>[\dhmin ]+) more of easy riding\."), (m, w, _) => [w.And(Easy(w.Week.StartsOn, Length(m) / 60))]),
        (Of(@"(?:At least )?(?<len>[\dhmin ]+) of hard riding ridden easy instead\."), (m, w, _) => [LowerBy(w, Length(m))]),
        (Of(@"(?<n>\w+) hard sessions? ridden easy instead\."), (m, w, _) => Sessions.Subsets([.. w.Week.Rides.Where(r => r.IsHard)], Count(m)).Select(s => Eased(w, s))),
        (Of(@"(?<len>[\dhmin ]+) more\."), (m, w, _) => [w.And(Easy(w.Week.StartsOn, Length(m) / 60))]),
        (Of(@"(?<len>[\dhmin ]+) less\."), (m, w, _) => [w.Scaled(0, 1 - Length(m) / w.Week.RideSeconds)]),
        (Of(@"(?<n>[\d,]+) points? of training stress less in the week: (fewer hours, or easier ones|easier hours)\."), LessStress),
        (Of(@"At most (?<len>[\dhmin ]+) in the week\."), (m, w, _) => [w.Scaled(0, Length(m) / w.Week.RideSeconds)]),
        (Of(@"At most (?<len>[\dhmin ]+) of the added time above easy\."), AddedAboveEasy),
        (Of(@"A ride of at most (?<len>[\dhmin ]+)\."), (m, w, f) => [w.With(Named(f, w), r => r.Times(Length(m) / r.DurationSeconds))]),
        (Of(@"Rides of at most (?<lens>.*), one after the other\."), OneAfterTheOther),
        (Of(@"The same rides? held back on the climbs and into the wind: an intensity ratio of (?<ratio>\d\.\d\d) at most, and (?:nothing|no more than (?<min>\d+) min) around threshold\."), HeldBack),
        (Of(@"One of the last (?<n>\w+) weeks with (?<p>\d+) % of the others’ hours at most\."), ALighterWeek),
        (Of(@"The (?:(?<n>\w+) )?easiest days? off, beside the same hard ones\."), (m, w, _) => [w.Only(EasiestDays(m, w), null)]),
        (Of(@"The riding of the (?:(?<n>\w+) )?easiest days? on the hardest one instead\."), OnTheHardestDay),
        (Of(@"Nothing but easy riding in the first (?<n>\w+) days back(?:, and at most (?<len>[\dhmin ]+) in the first seven days)?\."), BackEasily),
        (Of(@"At most (?<len>[\dhmin ]+) in those seven days\."), (m, w, f) => [BackForAtMost(w, Absence(f, w), Length(m))]),
        (Of(@"Put an easier day between (?<a>\w+day)’s and (?<b>\w+day)’s hard rides\."), (m, w, _) => [Eased(w, w.Week.Rides.Where(r => r.IsHard && r.Date == Printed.Day(m.Groups["b"].Value, w)))]),
        (Of(@"Keep to (?<high>\w+) (high|hard) days?(?: and (?<n>\w+) threshold days?)? a week\."), KeepTo),
        (Of(@"Leave (?<n>\w+) days? for rest or recovery\."), (m, w, _) => Sessions.Subsets([.. w.Week.Days.Select(d => d.Date)], Count(m)).SelectMany(d => Off(w, d))),
        (Of(@"Ride one long easy ride of (?<len>[\dhmin ]+)\."), (m, w, _) => w.Week.Days.Select(d => w.And(Easy(d.Date, Length(m) / 60)))),
        (Of(@"Ride one long easy ride of (?<len>[\dhmin ]+) in place of other riding\."), (m, w, _) => w.Week.Rides.Select(r => w.Without([r]).And(Easy(r.Date, Length(m) / 60)))),
        (Of(@"Ride more of the hours easy: (?<had>[\d.]+) of (?<asked>[\d.]+) h\."), (m, w, _) => [LowerBy(w, 3600 * Printed.Number(m.Groups["asked"].Value) - w.Week.Bands.Low)]),
        (Of(@"Ride the easy hours: (?<had>[\d.]+) of (?<asked>[\d.]+) h\."), (m, w, _) => [w.And(Easy(w.Week.StartsOn, 60 * Printed.Number(m.Groups["asked"].Value) - w.Week.Bands.Low / 60))]),
        (Of(@"Ride about (?<p>\d+) % of the time easy\."), (m, w, _) => [LowerBy(w, Printed.Number(m.Groups["p"].Value) / 100 * (w.Week.Bands.Total + Unbanded.SecondsIn(w.Week)) - w.Week.Bands.Low)]),
        (Of(@"Ride about (?<p>\d+) % of the sessions easy\."), SoManySessions),
        (Of(@"Let chronic load rise by no more than (?<n>\d+) points a week\."), NoFaster),
        (Of(@"A threshold near (?<watts>\d+) W in the rider file, from (?<date>\d+ \w+) on\."), NewThreshold),
    ];

    /// <summary>The weeks that come of it; null where the text is none that says what to do.</summary>
    public static IReadOnlyCollection<WeekUnderReview>? Of(string text, WeekUnderReview week, Finding finding)
    {
        if (FollowedChange.Of(text, week) is { } changed)
            return [changed];
        foreach (var (pattern, follow) in All)
        {
            if (pattern.Match(text) is { Success: true } match)
                return [.. follow(match, week, finding)];
        }
        return null;
    }

    /// <summary>What is told in general, beside what would have kept the rule, which says how.</summary>
    public static ImmutableArray<string> Principles { get; } =
    [
        "Put an easier day between hard days.", "Add hours in smaller steps.", "Lengthen the longest ride in smaller steps.", "Grow by easy hours first.",
        "Keep the easy rides easy.", "Plan a lighter week soon.", "Let hard days and easy days differ more.", "Ride nearer the usual hours.",
        "Ride the hours that are planned.", "Ride no more than the planned hours.", "Ride easy until the illness is well behind.",
        "Come back in steps: easy rides first, and fewer hours than usual.", "Test the threshold power again.", "Ride the long ride in place of one of the hard days.",
        "Rest, or ride short and easy, after the two heaviest days.",
    ];

    /// <summary>Each kind of text, for a test to see that it was met.</summary>
    public static IEnumerable<string> Patterns => All.Select(p => p.Text.ToString());

    private static Regex Of(string pattern) => new($"^{pattern}$");

    private static double Length(Match match) => Printed.Seconds(match.Groups["len"].Value);

    private static int Count(Match match) => Printed.Count(match.Groups["n"].Value);

    private static RideFigures Easy(LocalDate date, double minutes, int hour = 5) =>
        Sample.Ride(date, minutes >= 90 ? RideKind.Long : RideKind.Endurance, minutes, hour, 0, 1) with { LongEnough = minutes >= 90 };

    private static RideFigures Recovery(LocalDate date, double minutes) => Sample.Ride(date, RideKind.Recovery, minutes, 5, 0, 1);

    private static WeekUnderReview Eased(WeekUnderReview week, IEnumerable<RideFigures> rides) => week.With(rides, r => ChangedRide.Eased(r, week.Plan.Limits));

    private static WeekUnderReview Lowered(WeekUnderReview week, IEnumerable<RideFigures> session) =>
        week.With(session.Where(r => r.Kind == RideKind.High), r => r with { Kind = RideKind.Threshold });

    private static IEnumerable<RideFigures> Named(Finding finding, WeekUnderReview week) =>
        week.Week.Rides.Where(r => finding.Occurrences.Any(o => o.Rides.Contains(r.File)));

    private static IEnumerable<WeekUnderReview> Fewer(Match match, WeekUnderReview week, Finding _) =>
        Sessions.Choose(week, Count(match), match.Groups["kind"].Value == "high").SelectMany(s => new[] { Eased(week, s), week.Without(s) });

    private static IEnumerable<WeekUnderReview> FewerAndLower(Match match, WeekUnderReview week, Finding _)
    {
        var easy = Printed.Count(match.Groups["some"].Value);
        foreach (var chosen in Sessions.Subsets(Sessions.Of(week, high: true), Count(match)))
        {
            foreach (var eased in Sessions.Subsets(chosen, easy))
                yield return Lowered(week.Without(eased.SelectMany(s => s)), chosen.Except(eased).SelectMany(s => s));
        }
    }

    private static IEnumerable<WeekUnderReview> FewerAndSomeHigh(Match match, WeekUnderReview week, Finding _)
    {
        var high = Printed.Count(match.Groups["some"].Value);
        return Sessions.Subsets(Sessions.Of(week, high: false), Count(match))
            .Where(c => c.Count(s => s.Any(r => r.Kind == RideKind.High)) == high)
            .Select(c => week.Without(c.SelectMany(s => s)));
    }

    private static IEnumerable<WeekUnderReview> MoreDaysOff(Match match, WeekUnderReview week, Finding _) =>
        Sessions.Subsets([.. week.Week.Days.Where(d => !d.IsRestOrRecovery).Select(d => d.Date)], Count(match)).SelectMany(d => Off(week, d));

    private static IEnumerable<WeekUnderReview> Off(WeekUnderReview week, IReadOnlyCollection<LocalDate> dates) =>
        [week.Only(dates, null), week.Only(dates, d => Recovery(d, 30)), week.Only(dates, d => Recovery(d, 60))];

    private static IEnumerable<WeekUnderReview> Longer(Match match, WeekUnderReview week, Finding _)
    {
        var date = Printed.Day(match.Groups["day"].Value, week);
        var hour = match.Groups["hour"].Value;
        return week.Week.Rides.Where(r => r.Date == date && (hour.Length == 0 || $"{r.StartsAt.Hour:00}:{r.StartsAt.Minute:00}" == hour)).Select(ride => week.With([ride], Lengthened));

        RideFigures Lengthened(RideFigures ride)
        {
            var (seconds, bands) = (ride.DurationSeconds + Length(match), ride.Bands + new BandSeconds(Length(match), 0, 0));
            return ride with { DurationSeconds = seconds, Bands = bands, LongEnough = KindOfRide.IsLongEnough(seconds, bands, week.Plan.Limits) };
        }
    }

    private static IEnumerable<WeekUnderReview> EasyEnough(Match match, WeekUnderReview week, Finding finding) =>
    [
        week.With(Named(finding, week), r => r.WithLow(Printed.Number(match.Groups["p"].Value) / 100 * r.Bands.Total) is var easier
            ? easier with { LongEnough = KindOfRide.IsLongEnough(easier.DurationSeconds, easier.Bands, week.Plan.Limits) } : r),
    ];

    private static IEnumerable<WeekUnderReview> InPlaceOfAHardRide(Match match, WeekUnderReview week, Finding _) =>
        week.Week.Rides.Where(r => r.IsHard).Select(hard => week.Without([hard]).And(Easy(hard.Date, Length(match) / 60, hard.StartsAt.Hour)));

    private static WeekUnderReview LowerBy(WeekUnderReview week, double seconds)
    {
        var share = seconds / week.Week.Bands.AboveLow;
        return week.Each(r => [r.WithLow(Math.Min(r.Bands.Total, r.Bands.Low + share * r.Bands.AboveLow))]);
    }

    /// <summary>From the first day on, and from the last day back: its place in the week decides what is left of it at the week's end.</summary>
    private static IEnumerable<WeekUnderReview> LessStress(Match match, WeekUnderReview week, Finding _)
    {
        var points = Printed.Number(match.Groups["n"].Value.Replace(",", "", StringComparison.Ordinal));
        return [Less(week.Week.Rides), Less(week.Week.Rides.Reverse())];

        WeekUnderReview Less(IEnumerable<RideFigures> order)
        {
            var left = points;
            var now = new Dictionary<string, double>();
            foreach (var ride in order)
            {
                var taken = Math.Min(left, ride.Stress ?? 0);
                now[ride.File] = (ride.Stress ?? 0) - taken;
                left -= taken;
            }
            return week.Each(r => [r with { Stress = r.Stress is null ? null : now[r.File] }]);
        }
    }

    private static IEnumerable<WeekUnderReview> AddedAboveEasy(Match match, WeekUnderReview week, Finding _)
    {
        var before = 3600 * new Background(week).OrdinaryMean!.Value.AboveLow;
        var tooMuch = week.Week.Bands.AboveLow - (before + Length(match));
        return [LowerBy(week, tooMuch)];
    }

    private static IEnumerable<WeekUnderReview> OneAfterTheOther(Match match, WeekUnderReview week, Finding finding)
    {
        double[] lengths = [.. match.Groups["lens"].Value.Split([", ", " and "], StringSplitOptions.None).Select(Printed.Seconds)];
        string[] rides = [.. finding.Occurrences.SelectMany(o => o.Rides)];
        return [week.With(Named(finding, week), r => r.Times(lengths[Array.IndexOf(rides, r.File)] / r.DurationSeconds))];
    }

    private static IEnumerable<WeekUnderReview> HeldBack(Match match, WeekUnderReview week, Finding finding)
    {
        var (ratio, minutes) = (Printed.Number(match.Groups["ratio"].Value), match.Groups["min"].Success ? Printed.Number(match.Groups["min"].Value) : 0);
        return
        [
            week.With(Named(finding, week), r => r with
            {
                IntensityRatio = Math.Min(ratio, r.IntensityRatio ?? 0),
                AtThresholdShare = r.AtThresholdShare is { } above ? above with { SustainedSeconds = Math.Min(above.SustainedSeconds, 60 * minutes) } : null,
            }),
        ];
    }

    private static IEnumerable<WeekUnderReview> ALighterWeek(Match match, WeekUnderReview week, Finding _)
    {
        double[] hours = [week.Week.Hours, .. week.Past.Weeks.Reverse().Take(Count(match) - 1).Select(w => w.Hours)];
        var share = Printed.Number(match.Groups["p"].Value) / 100;
        return Enumerable.Range(0, hours.Length).Where(ago => hours[ago] > 0)
            .Select(ago => week.Scaled(ago, share * (hours.Sum() - hours[ago]) / (hours.Length - 1) / hours[ago]));
    }

    private static LocalDate[] EasiestDays(Match match, WeekUnderReview week) =>
        [.. week.Week.Days.Where(d => d.Stress > 0).OrderBy(d => d.Stress).Take(match.Groups["n"].Success ? Count(match) : 1).Select(d => d.Date)];

    private static IEnumerable<WeekUnderReview> OnTheHardestDay(Match match, WeekUnderReview week, Finding _)
    {
        var days = EasiestDays(match, week);
        var hardest = week.Week.Days.MaxBy(d => d.Stress)!.Date;
        return [week.With(week.Week.Rides.Where(r => days.Contains(r.Date)), r => ChangedRide.On(r, hardest))];
    }

    private static IEnumerable<WeekUnderReview> BackEasily(Match match, WeekUnderReview week, Finding finding)
    {
        var absence = Absence(finding, week);
        var eased = Eased(week, week.Week.Rides.Where(r => r.IsHard && r.Date > absence.To && r.Date <= absence.To.PlusDays(Count(match))));
        return [match.Groups["len"].Success ? BackForAtMost(eased, absence, Length(match)) : eased];
    }

    private static WeekUnderReview BackForAtMost(WeekUnderReview week, Absence absence, double seconds)
    {
        bool IsBack(RideFigures ride) => ride.Date > absence.To && ride.Date <= absence.To.PlusDays(7);
        var before = week.Past.LastWeek?.Rides.Where(IsBack).Sum(r => r.DurationSeconds) ?? 0;
        var now = week.Week.Rides.Where(IsBack).Sum(r => r.DurationSeconds);
        // What was ridden in the week before stays; if that alone was too much, so much less of it.
        var (left, then) = (Math.Max(0, seconds - before), Math.Min(1, seconds / Math.Max(1, before)));
        var shorter = week.Each(r => IsBack(r) ? [r.Times(left / now)] : [r]);
        return then < 1 ? shorter.Scaled(1, then) : shorter;
    }

    private static Absence Absence(Finding finding, WeekUnderReview week)
    {
        var days = finding.Occurrences.SelectMany(o => o.Numbers).First(n => n.Name == "days_out").Value;
        return new Background(week).Returns.First(a => a.Days == days);
    }

    private static IEnumerable<WeekUnderReview> KeepTo(Match match, WeekUnderReview week, Finding _)
    {
        var (high, threshold) = (Printed.Count(match.Groups["high"].Value), match.Groups["n"].Success ? Count(match) : 0);
        var all = Sessions.Of(week, high: false);
        var (hard, lighter) = (Sessions.Of(week, high: true).Take(high).ToArray(), all.Where(s => s.All(r => r.Kind == RideKind.Threshold)).Take(threshold).ToArray());
        return [week.Without(all.Where(s => !hard.Concat(lighter).Any(kept => kept[0] == s[0])).SelectMany(s => s))];
    }

    private static IEnumerable<WeekUnderReview> SoManySessions(Match match, WeekUnderReview week, Finding _)
    {
        RideFigures[] sessions = [.. week.Week.Rides.Where(r => r.Kind != RideKind.None)];
        var easy = (int)Math.Ceiling(Printed.Number(match.Groups["p"].Value) / 100 * sessions.Length - 1e-9);
        var missing = easy - sessions.Count(r => !r.IsHard && r.Kind != RideKind.Unrated);
        return Sessions.Subsets([.. sessions.Where(r => r.IsHard)], Math.Min(missing, sessions.Count(r => r.IsHard))).Select(s => Eased(week, s));
    }

    /// <summary>Every day with so much less stress that chronic load rises by the points named.</summary>
    private static IEnumerable<WeekUnderReview> NoFaster(Match match, WeekUnderReview week, Finding _)
    {
        var (allowed, none) = (Count(match), week.Each(r => [r with { Stress = 0 }]).Week.Ramp);
        var share = (allowed - none) / (week.Week.Ramp - none);
        return [week.Each(r => [r with { Stress = r.Stress * share }])];
    }

    private static IEnumerable<WeekUnderReview> NewThreshold(Match match, WeekUnderReview week, Finding _)
    {
        var entry = new ThresholdEntry(Printed.Date(match.Groups["date"].Value, week), new Watts(Printed.Number(match.Groups["watts"].Value)), null);
        var rider = week.Plan.Rider;
        return [week with { Plan = week.Plan with { Rider = rider with { Thresholds = [.. rider.Thresholds.Append(entry).OrderBy(t => t.From)] } } }];
    }
}
