using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Tests.Review;

public class RosterBuilderTests
{
    private static readonly LocalDate AsOf = new(2026, 6, 22);
    private static readonly ReviewDocument Demo = DemoReview.Build();

    [Fact]
    public void Broken_rules_come_before_no_review_before_watch_before_kept()
    {
        var roster = RosterBuilder.Build(AsOf, [Rider("kept"), Unread("unread"), Rider("watch", ("monotony", Verdict.Watch)), Rider("broken", ("long-ride", Verdict.Broken))]);
        Assert.Equal(["broken", "unread", "watch", "kept"], roster.Riders.Select(r => r.Folder));
        Assert.Equal(["broken", "no review", "watch", "kept"], roster.Riders.Select(r => Words.Of(r.Need)));
    }

    [Fact]
    public void One_rule_that_guards_against_too_much_weighs_as_much_as_two_that_shape_the_week()
    {
        var roster = RosterBuilder.Build(AsOf,
        [
            Rider("one-shape", ("long-ride", Verdict.Broken)),
            Rider("two-guards", ("hard-day-spacing", Verdict.Broken), ("rest-days", Verdict.Broken)),
            Rider("three-shape", ("long-ride", Verdict.Broken), ("weekly-hours", Verdict.Broken), ("intensity-split", Verdict.Broken)),
        ]);
        Assert.Equal(["two-guards", "three-shape", "one-shape"], roster.Riders.Select(r => r.Folder));
    }

    [Fact]
    public void An_unexplained_week_without_a_ride_comes_before_other_rules_to_watch()
    {
        var silent = Rider("silent", ("weekly-hours", Verdict.Watch));
        silent = silent with { Review = silent.Review! with { Week = silent.Review.Week with { RideCount = 0 } } };
        var away = silent with { Folder = "away", Review = silent.Review! with { Week = silent.Review.Week with { Exception = ExceptionKind.Away } } };
        var busy = Rider("busy", ("weekly-hours", Verdict.Watch), ("rest-days", Verdict.Watch));
        Assert.Equal(["silent", "busy", "away"], RosterBuilder.Build(AsOf, [busy, away, silent]).Riders.Select(r => r.Folder));
    }

    [Fact]
    public void Why_is_one_line_for_every_rider()
    {
        var roster = RosterBuilder.Build(AsOf, [Rider("a", ("long-ride", Verdict.Broken)), Unread("b") with { Problem = "rider.toml:1:1: wrong.\nrider.toml:2:1: wrong too." }]);
        Assert.All(roster.Riders, r => Assert.DoesNotContain('\n', r.Why));
        Assert.Equal(Demo.Summary.Headline, roster.Riders[0].Why);
        Assert.Equal("rider.toml:1:1: wrong. rider.toml:2:1: wrong too.", roster.Riders[1].Why);
    }

    [Fact]
    public void The_order_does_not_depend_on_who_was_finished_first()
    {
        RosterInput[] riders = [Rider("a", ("long-ride", Verdict.Broken)), Rider("b"), Rider("c"), Unread("d"), Unread("e"), Rider("f", ("monotony", Verdict.Watch))];
        var forward = RosterBuilder.Build(AsOf, riders);
        Array.Reverse(riders);
        Assert.Equal(ReviewJson.Write(forward), ReviewJson.Write(RosterBuilder.Build(AsOf, riders)));
    }

    private static RosterInput Unread(string folder) => new(folder, null, "No usable ride.", null);

    private static RosterInput Rider(string folder, params (string Rule, Verdict Verdict)[] verdicts)
    {
        var findings = Demo.Findings.Select(f => f with { Verdict = verdicts.FirstOrDefault(v => v.Rule == f.Rule) is { Rule: not null } v ? v.Verdict : Verdict.Kept });
        return new RosterInput(folder, Demo with { Findings = findings.ToImmutableArray() }, null, $"{folder}.pdf");
    }
}
