using System.Collections.Immutable;
using System.Text.RegularExpressions;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Tests.Rules;
using RideAudit.Weeks;
using Xunit.Abstractions;

namespace RideAudit.Tests.Review;

/// <summary>Two thousand random weeks, each read as its reader reads it: nothing in a review says the opposite of anything else in it.</summary>
public sealed partial class NoContradictionTests(ITestOutputHelper output)
{
    private const int Weeks = 2000;
    private const int Batches = 8;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void No_review_contradicts_itself(int batch)
    {
        var wrong = new List<string>();
        for (var seed = batch; seed < Weeks; seed += Batches)
        {
            var (document, week) = RandomReviews.Draw(seed);
            wrong.AddRange(Contradictions(document, week).Select(w => $"{seed}: {w} | {document.Summary.Headline} {document.Summary.Subline}"));
        }
        foreach (var line in wrong.Take(60))
            output.WriteLine(line);
        Assert.Empty(wrong);
    }

    [Fact]
    public void The_weeks_are_many_kinds_of_weeks()
    {
        var drawn = Enumerable.Range(0, 600).Select(RandomReviews.Draw).ToArray();

        Assert.All(
            RuleBook.Standard.All.Select(r => r.Id).Except(NeedBestEfforts),
            id => Assert.Contains(drawn, d => d.Document.Findings.Any(f => f.Rule == id && f.Verdict is Verdict.Broken or Verdict.Watch)));
        Assert.All(Enum.GetValues<ChangeKind>(), kind => Assert.Contains(drawn, d => d.Document.SmallestChange is { } c && c.Changes.Any(x => x.Kind == kind)));
        Assert.All(Enum.GetValues<ExceptionKind>(), kind => Assert.Contains(drawn, d => d.Document.Week.Exception == kind));
        Assert.Contains(drawn, d => d.Document.Summary.Headline.Contains("kept", StringComparison.Ordinal));
    }

    /// <summary>Rides made of figures alone have no best efforts.</summary>
    private static string[] NeedBestEfforts => ["threshold-fresh"];

    private static IEnumerable<string> Contradictions(ReviewDocument document, WeekUnderReview week)
    {
        var findings = document.Findings;
        var advice = Advice(document).ToArray();
        var wanting = findings.Where(f => f.Verdict is Verdict.Broken or Verdict.Watch).Select(f => f.Rule).ToHashSet();
        var broken = findings.Where(f => f.Verdict == Verdict.Broken).ToArray();
        if (broken.Any(f => f.Rule == "hard-day-count"))
        {
            foreach (var text in advice.Where(a => Harder().IsMatch(a)))
                yield return $"harder riding beside too many hard days: {text}";
        }
        if (document.Week.Days.Any(d => d.Exception == ExceptionKind.Ill))
        {
            foreach (var text in advice.Where(a => More().IsMatch(a)))
                yield return $"more riding in an ill week: {text}";
            if (document.SmallestChange is { } asked && asked.Changes.Any(c => c.Kind is ChangeKind.Lengthen))
                yield return "a longer ride in an ill week";
        }
        foreach (var text in MoreOnAClosedDay(document, week, advice).Concat(MoreAndLess(week, advice)).Concat(HeldAndAsked(document, advice)))
            yield return text;
        if (broken.Length > 0 && document.SmallestChange is { Changes.Length: > 0 } change)
        {
            var after = RuleBook.Standard.Judge(week with { Week = Changed(change, week) });
            foreach (var rule in change.Keeps.Append(RuleBook.MostSerious(findings)[0].Rule).Where(k => after.Single(f => f.Rule == k).Verdict != Verdict.Kept))
                yield return $"the change does not keep {rule}: {change.Sentence}";
            foreach (var (was, now) in findings.Zip(after).Where(p => p.First.Verdict is Verdict.Kept or Verdict.Watch && p.Second.Verdict > p.First.Verdict))
                yield return $"the change costs {now.Rule}: {was.Verdict} to {now.Verdict}";
        }
        foreach (var finding in findings.Where(f => !wanting.Contains(f.Rule) && (f.WouldHaveKept is not null || f.Advice is not null)))
            yield return $"advised on and {finding.Verdict}: {finding.Rule}";
        foreach (var to in document.Summary.ToChange.Where(t => !wanting.Contains(t.Rule)))
            yield return $"to change and not wanting: {to.Rule}";
        foreach (var held in document.Summary.Held.Where(h => findings.Any(f => wanting.Contains(f.Rule) && f.Held == h)))
            yield return $"held and advised on: {held}";
        if (document.Summary.Held.Any(h => h.StartsWith("long ride", StringComparison.Ordinal)) && advice.Any(a => a.Contains("long easy ride", StringComparison.Ordinal)))
            yield return "the long ride held and is asked for";
        var saysKept = Kept().IsMatch(document.Summary.Headline);
        if (saysKept && broken.Length > 0)
            yield return "kept and broken";
        if (saysKept && document.Week.Finished && (IsHardlyJudged(findings, 0.5) || IsHardlyJudged([.. findings.Where(f => Matter.Contains(f.Rule))], 0.4)))
            yield return "kept and hardly judged";
        if (broken.Length > 0 && document.Week.Exception is null or ExceptionKind.Lighter && broken.Length > 0
            && !document.Summary.Headline.StartsWith(Shown.Capital(RuleBook.MostSerious(findings)[0].Headline!), StringComparison.Ordinal))
            yield return "the headline leads with something else";
        if (NothingMore().IsMatch(string.Join(' ', advice.Append(document.Summary.Subline))))
            yield return "nothing more, as advice";
        if (Grammar().IsMatch(string.Join(' ', findings.Select(f => f.Sentence).Concat(advice).Append(document.Summary.Headline).Append(document.Summary.Subline))))
            yield return "a broken sentence";
    }

    /// <summary>Nobody is asked for more riding and for less of it.</summary>
    private static IEnumerable<string> MoreAndLess(WeekUnderReview week, string[] advice)
    {
        var more = advice.Where(a => More().IsMatch(a)).ToArray();
        foreach (var less in advice.Where(a => Less().IsMatch(a)))
        {
            foreach (var text in more)
                yield return $"less and more: {less} | {text}";
        }
        foreach (var shorter in advice.Where(a => a.StartsWith("A ride of at most", StringComparison.Ordinal)))
        {
            foreach (var text in advice.Where(a => LongerRide().IsMatch(a)))
                yield return $"a shorter and a longer ride: {shorter} | {text}";
        }
        foreach (var text in advice.Where(a => HoursAsked().IsMatch(a)).SelectMany(_ => advice.Where(a => LeftOut().IsMatch(a))))
            yield return $"more hours and less riding: {text}";
        if (new Background(week).JustBack)
        {
            foreach (var text in more)
                yield return $"more riding just after an absence: {text}";
        }
    }

    /// <summary>What held is not what the same review asks to change.</summary>
    private static IEnumerable<string> HeldAndAsked(ReviewDocument document, string[] advice)
    {
        (string Held, string Asked)[] opposites =
        [
            ("number of hard days", @"(hard|high) (day|session)s? fewer|in place of one of the hard"), ("growth in small steps", "smaller steps|load rise|training stress less"),
            ("long ride", "long easy ride|longest ride in smaller steps|One easy ride of"), ("hard days spaced", "easier day between"), ("easy hours", "easy hours:|more of easy riding"),
            ("rest", "more days? off|for rest or recovery"), ("intensity split", "% of the (time|sessions) easy"), ("ridden", @"\d (h|min) (more|less)\.|planned hours|usual hours"),
        ];
        foreach (var (held, asked) in opposites)
        {
            if (document.Summary.Held.Any(h => h.Contains(held, StringComparison.Ordinal)) && advice.FirstOrDefault(a => Regex.IsMatch(a, asked)) is { } text && held != "rest")
                yield return $"held {held} and asked for: {text}";
        }
    }

    /// <summary>The rules that guard the rider, and those on easy hours and intensity: an account of one's own, not the program's.</summary>
    private static readonly string[] Matter =
    [
        "hard-day-spacing", "hard-day-count", "rest-days", "rest-after-load", "long-ride", "endurance-volume", "intensity-split", "chronic-ramp", "easy-rides-easy", "monotony",
        "long-ride-first", "return-to-riding",
    ];

    private static bool IsHardlyJudged(ImmutableArray<Finding> findings, double share) => findings.Count(f => f.Verdict == Verdict.NotJudged) > share * findings.Length;

    /// <summary>Nobody is asked to ride more on a day out, on an event, or on the day before one.</summary>
    private static IEnumerable<string> MoreOnAClosedDay(ReviewDocument document, WeekUnderReview week, string[] advice)
    {
        var calendar = new Background(week).Calendar;
        foreach (var day in document.Week.Days.Where(d => !calendar.MayAskForMore(d.Date)))
        {
            foreach (var text in advice.Where(a => Regex.IsMatch(a, $@"\bmore on {day.Date.DayOfWeek}\b|{day.Date.DayOfWeek}’s( \d\d:\d\d)? ride (lengthened|ridden as the long)")))
                yield return $"more on {day.Date.DayOfWeek}: {text}";
            if (document.SmallestChange is { } change && change.Changes.Any(c => c.To == day.Date && c.Kind is ChangeKind.Move or ChangeKind.Swap or ChangeKind.Lengthen or ChangeKind.RideLong && c.To == day.Date))
                yield return $"a change onto {day.Date.DayOfWeek}: {change.Sentence}";
        }
    }

    private static IEnumerable<string> Advice(ReviewDocument document) =>
        document.Findings.Select(f => f.WouldHaveKept).OfType<string>().Concat(document.Summary.ToChange.Select(t => t.Title)).Concat(document.SmallestChange is { } c ? [c.Sentence] : []);

    private static WeekFacts Changed(SmallestChange change, WeekUnderReview week)
    {
        var limits = week.Plan.Limits;
        IEnumerable<RideFigures> Now(RideFigures ride) => change.Changes.FirstOrDefault(c => c.Ride == ride.File) is not { } done ? [ride] : done.Kind switch
        {
            ChangeKind.Ease => [ChangedRide.Eased(ride, limits)],
            ChangeKind.LeaveOut => [],
            ChangeKind.Lengthen => [ChangedRide.Lengthened(ride, limits)],
            ChangeKind.RideLong => [ChangedRide.AsLongRide(ride, limits)],
            _ => [ChangedRide.On(ride, done.To)],
        };
        var rides = week.Week.Rides.SelectMany(Now).ToArray();
        return Sample.Week(rides, week.Week.StartsOn, week.Week.LoadBefore, week.Week.FirstRideOn, limits, week.Week.DaysThatCount, week.Week.Exception);
    }

    [GeneratedRegex(@"\bride hard\b|hard ride hard|planned hard ride|harder|more (hard|intens)", RegexOptions.IgnoreCase)]
    private static partial Regex Harder();

    [GeneratedRegex(@"\bmore (on \w+day|of easy|easy|riding|hours)|\d (h|min) more\b|lengthened|longer ride|Ride the (easy )?hours|Ride one long easy ride of [^.]*(h|min)\.|as the long ride")]
    private static partial Regex More();

    [GeneratedRegex(@"\d (h|min) less\.|no more than the planned hours|^At most .* in (the week|those seven days)|and at most .* in the first seven days|Add hours in smaller steps")]
    private static partial Regex Less();

    [GeneratedRegex(@"long easy ride|lengthened|more on \w+day|One easy ride of|as the long ride|Ride the long ride")]
    private static partial Regex LongerRide();

    [GeneratedRegex(@"^[\dhmin ]+ more\.$|Ride the hours|nearer the usual")]
    private static partial Regex HoursAsked();

    [GeneratedRegex(@"left out|fewer hours|easiest days? off")]
    private static partial Regex LeftOut();

    [GeneratedRegex(@"plan was kept|kept the plan|keeps the plan|were kept\b(?!.*judged)")]
    private static partial Regex Kept();

    [GeneratedRegex(@"(?<![\d.])0(\.0)?[\s ](h|min) (more|less)|(?<!\d)0[\s ]min (more|less)|\bno (more )?(hard|high|threshold) days? fewer|-\d+ (more|fewer)")]
    private static partial Regex NothingMore();

    [GeneratedRegex(@"\.\.|  |, ,| ,|\bone \w+ days\b|\bzero\b|[a-z]\.[A-Z]|NaN|∞|: \.|\band and\b")]
    private static partial Regex Grammar();
}
