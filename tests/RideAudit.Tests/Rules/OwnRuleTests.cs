using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;

namespace RideAudit.Tests.Rules;

/// <summary>A rule added to the book is taken by the review, its page, its JSON and the change search, and by nothing else that has to know of it.</summary>
public sealed class OwnRuleTests
{
    private static readonly RuleBook Book = RuleBook.Standard.With(new FreeTuesday());

    [Fact]
    public void Its_finding_is_the_last_in_its_own_words()
    {
        var finding = Book.Judge(Week(tuesdayMinutes: 60))[^1];

        Assert.Equal(("free-tuesday", "Free Tuesday", Verdict.Broken), (finding.Rule, finding.Name, finding.Verdict));
        Assert.Equal("Tuesday held 1 h of riding.", finding.Sentence.Plain());
        Assert.Equal("No ride on Tuesday.", finding.WouldHaveKept);
        Assert.Equal("Tuesday 1 h", finding.Occurrences.Single().Numbers.Single().Text.Plain());
        Assert.Equal("watch beyond 15 % off the plan", finding.Limits.Single().Text.Plain());
    }

    [Fact]
    public void What_held_is_in_its_own_words() => Assert.Equal("Tuesday free", Book.Judge(Week(tuesdayMinutes: 0))[^1].Held);

    [Fact]
    public void A_smallest_change_is_sought_for_it()
    {
        var week = Week(tuesdayMinutes: 60);
        var change = ChangeSearch.Find(week, Book.Judge(week), Book)!;

        Assert.Contains("free-tuesday", change.Keeps);
        Assert.Contains("free-Tuesday", change.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_one_and_the_JSON_take_it()
    {
        var review = DemoReview.Build(rules: Book);

        Assert.StartsWith("Tuesday ridden", review.Summary.Headline, StringComparison.Ordinal);
        Assert.Equal("free-tuesday", review.Summary.ToChange[0].Rule);
        Assert.Equal("Leave Tuesday free.", review.Summary.ToChange[0].Title);
        Assert.Contains("\"tuesday_h\": ", ReviewJson.Write(review), StringComparison.Ordinal);
        Assert.Contains("free-tuesday", ReviewJson.Write(ReviewBuilder.Rules(new Rider(), Book)), StringComparison.Ordinal);
    }

    private static WeekUnderReview Week(int tuesdayMinutes)
    {
        var rides = new List<RideAudit.Figures.RideFigures>();
        for (var week = -6; week <= 0; week++)
        {
            rides.Add(Sample.Ride(Sample.Monday.PlusDays(7 * week + 3), RideKind.Recovery, 30));
            rides.Add(Sample.Ride(Sample.Monday.PlusDays(7 * week), RideKind.Endurance, 60));
            rides.Add(Sample.Ride(Sample.Monday.PlusDays(7 * week + 5), RideKind.Long, 150));
        }
        if (tuesdayMinutes > 0)
            rides.Add(Sample.Ride(Sample.Monday.PlusDays(1), RideKind.Endurance, tuesdayMinutes));
        return Sample.Review(rides, Sample.Plan(5));
    }

    private sealed class FreeTuesday : Rule<FreeTuesday.Reading>
    {
        public override string Id => "free-tuesday";

        public override string Name => "Free Tuesday";

        public override string ShortName => "free-Tuesday";

        public override Standing Standing { get; } = new() { Rank = 1 };

        public override bool IsChangeSought => true;

        public override Evidence Evidence => Evidence.CommonPractice;

        public override string Source => NoSource;

        public override ImmutableArray<string> LimitNames => ["hours_watch_margin"];

        protected override Needs Needs => Needs.FinishedWeek;

        public override string Ask(PlanInForce plan) => "No ride on Tuesday.";

        protected override Look Read(JudgedWeek week)
        {
            var hours = week.Week.Days.Single(d => d.Date.DayOfWeek == IsoDayOfWeek.Tuesday).RideSeconds / 3600;
            return As(hours > 0 ? Verdict.Broken : Verdict.Kept, new Reading(hours));
        }

        protected override RuleWords Tell(Reading reading, JudgedWeek week, Verdict verdict) => new()
        {
            Sentence = $"Tuesday held {Shown.Length(reading.Hours * 3600)} of riding.",
            WouldHaveKept = "No ride on Tuesday.",
            Advice = "Leave Tuesday free.",
            Headline = "Tuesday ridden",
            Held = "Tuesday free",
            Occurrences = verdict == Verdict.Kept
                ? []
                : [new Occurrence { Verdict = verdict, Numbers = [NamedNumber.Of("tuesday_h", reading.Hours, 2, v => $"Tuesday {Shown.Length(v * 3600)}")] }],
        };

        internal readonly record struct Reading(double Hours);
    }
}
