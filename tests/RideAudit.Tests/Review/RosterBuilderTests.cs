using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Document.Json;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rules;

namespace RideAudit.Tests.Review;

public class RosterBuilderTests
{
    private static readonly LocalDate AsOf = new(2026, 6, 22);
    private static readonly ReviewDocument Demo = DemoReview.Build();

    [Fact]
    public void Riders_come_by_what_may_happen_to_them()
    {
        RosterInput[] riders =
        [
            Rider("kept"), Excepted("away", ExceptionKind.Away), Rider("watched-shape", ("lighter-week", Verdict.Watch)), Rider("broken-shape", ("long-ride", Verdict.Broken)),
            Rider("watched-guard", ("return-to-riding", Verdict.Watch)), Unread("unread"), Excepted("ill", ExceptionKind.Ill), Rider("broken-guard", ("monotony", Verdict.Broken)),
        ];
        Assert.Equal(
            ["broken-guard", "ill", "unread", "watched-guard", "broken-shape", "watched-shape", "away", "kept"],
            RosterBuilder.Build(AsOf, riders).Riders.Select(r => r.Folder));
    }

    [Fact]
    public void Coming_back_then_rest_after_load_then_spacing_lead()
    {
        RosterInput[] riders =
        [
            Rider("a-spacing", ("hard-day-spacing", Verdict.Broken)), Rider("b-rest", ("rest-after-load", Verdict.Broken)), Rider("c-return", ("return-to-riding", Verdict.Broken)),
        ];
        Assert.Equal(["c-return", "b-rest", "a-spacing"], RosterBuilder.Build(AsOf, riders).Riders.Select(r => r.Folder));
    }

    [Fact]
    public void Many_rules_that_shape_the_week_do_not_outweigh_one_that_guards_the_rider()
    {
        var roster = RosterBuilder.Build(AsOf,
        [
            Rider("four-shape", ("long-ride", Verdict.Broken), ("weekly-hours", Verdict.Broken), ("intensity-split", Verdict.Broken), ("endurance-volume", Verdict.Broken)),
            Rider("one-guard", ("rest-days", Verdict.Broken)),
        ]);
        Assert.Equal(["one-guard", "four-shape"], roster.Riders.Select(r => r.Folder));
    }

    [Fact]
    public void Ill_away_and_not_judged_are_needs_of_their_own_unless_what_guards_the_rider_was_broken()
    {
        var unjudged = Rider("open") with { Review = Demo with { Findings = [.. Demo.Findings.Select(f => f with { Verdict = Verdict.NotJudged })] } };
        RosterInput[] riders =
        [
            Excepted("ill", ExceptionKind.Ill, ("weekly-hours", Verdict.Broken)), Excepted("ill-and-hard", ExceptionKind.Ill, ("return-to-riding", Verdict.Broken)),
            Excepted("away", ExceptionKind.Away, ("monotony", Verdict.Watch)), Excepted("lighter", ExceptionKind.Lighter), Excepted("race", ExceptionKind.Event), unjudged,
        ];
        Assert.Equal(
            ["away away", "ill ill", "ill-and-hard broken", "lighter kept", "open not judged", "race event"],
            RosterBuilder.Build(AsOf, riders).Riders.Select(r => $"{r.Folder} {Words.Of(r.Need)}").Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Riders_who_share_a_finding_are_told_together()
    {
        RosterInput[] riders =
        [
            Rider("a", ("long-ride", Verdict.Broken), ("monotony", Verdict.Watch)), Rider("b", ("long-ride", Verdict.Broken), ("hard-day-spacing", Verdict.Broken)),
            Rider("c", ("long-ride", Verdict.Watch)), Rider("d", ("hard-day-spacing", Verdict.Broken)),
        ];
        var shared = RosterBuilder.Build(AsOf, riders).Shared;
        Assert.Equal(["hard-day-spacing broken b d", "long-ride broken b a"], shared.Select(s => $"{s.Rule} {Words.Of(s.Verdict)} {string.Join(' ', s.Riders)}"));
    }

    [Fact]
    public void A_rider_has_four_weeks_by_day_every_verdict_and_what_is_planned()
    {
        var rider = Assert.Single(RosterBuilder.Build(AsOf, [new RosterInput("a", Demo with { Note = "Easy on the knee.\n\nCall." }, null, null)]).Riders);
        Assert.Equal(["2026-05-25", "2026-06-01", "2026-06-08", "2026-06-15"], rider.Weeks.Select(w => Shown.Iso(w.StartsOn)));
        Assert.Equal(Demo.Week.Days.Select(d => (d.Date, d.Kind, d.Hours, d.Stress)), rider.Weeks[^1].Days.Select(d => (d.Date, d.Kind, d.Hours, d.Hours > 0 ? d.Stress : Demo.Week.Days.First(o => o.Date == d.Date).Stress)));
        Assert.Equal(Demo.History[^2].Stress, rider.Weeks[^2].Days.Sum(d => d.Stress ?? 0), 6);
        Assert.Equal(Demo.Findings.Select(f => (f.Rule, f.Verdict)), rider.Verdicts.Select(v => (v.Rule, v.Verdict)));
        var planned = Demo.Week.PlannedAndRidden.Where(h => h.Planned is { Kind: not PlannedKind.Rest }).ToArray();
        Assert.Equal((planned.Length, planned.Count(h => h.RiddenOn is not null)), (rider.PlannedSessions, rider.PlannedSessionsDone));
        Assert.Contains(rider.Facts, f => f.Plain().Contains($"{rider.PlannedSessionsDone} of {rider.PlannedSessions} planned sessions ridden", StringComparison.Ordinal));
        Assert.Contains("Note: Easy on the knee. Call.", rider.Facts);
    }

    [Fact]
    public void The_next_event_is_the_first_that_is_not_over()
    {
        var calendar = new PlanCalendar(
            DemoReview.Rider with
            {
                Exceptions =
                [
                    new(new(2026, 6, 1), new(2026, 6, 7), ExceptionKind.Event), new(new(2026, 8, 2), new(2026, 8, 2), ExceptionKind.Event),
                    new(new(2026, 7, 1), new(2026, 7, 9), ExceptionKind.Away), new(new(2026, 7, 12), new(2026, 7, 13), ExceptionKind.Event),
                ],
            },
            PlanTable.Empty);
        Assert.Equal(new(new(2026, 7, 12), new(2026, 7, 13), null), LastWeeks.NextEvent(calendar, AsOf));
        Assert.Equal(new LocalDate(2026, 7, 12), LastWeeks.NextEvent(calendar, new(2026, 7, 13))!.From);
        Assert.Null(LastWeeks.NextEvent(calendar, new(2026, 8, 3)));
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
        Assert.Equal("rider.toml:1:1: wrong. rider.toml:2:1: wrong too.", roster.Riders[0].Why);
        Assert.Equal(Demo.Summary.Headline, roster.Riders[1].Why);
    }

    [Fact]
    public void The_order_does_not_depend_on_who_was_finished_first()
    {
        RosterInput[] riders = [Rider("a", ("long-ride", Verdict.Broken)), Rider("b"), Rider("c"), Unread("d"), Unread("e"), Rider("f", ("monotony", Verdict.Watch))];
        var forward = RosterBuilder.Build(AsOf, riders);
        Array.Reverse(riders);
        Assert.Equal(ReviewJson.Write(forward), ReviewJson.Write(RosterBuilder.Build(AsOf, riders)));
    }

    private static RosterInput Excepted(string folder, ExceptionKind kind, params (string Rule, Verdict Verdict)[] verdicts)
    {
        var rider = Rider(folder, verdicts);
        return rider with { Review = rider.Review! with { Week = rider.Review.Week with { Exception = kind } } };
    }

    private static RosterInput Unread(string folder) => new(folder, null, "No usable ride.", null);

    private static RosterInput Rider(string folder, params (string Rule, Verdict Verdict)[] verdicts)
    {
        var findings = Demo.Findings.Select(f => f with { Verdict = verdicts.FirstOrDefault(v => v.Rule == f.Rule) is { Rule: not null } v ? v.Verdict : Verdict.Kept });
        return new RosterInput(folder, Demo with { Findings = findings.ToImmutableArray() }, null, $"{folder}.pdf");
    }
}
