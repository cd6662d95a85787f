using System.Text.Json;
using Ical.Net;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

public class NextTests
{
    [Fact]
    public void The_calendar_the_table_and_the_JSON_say_the_same_days()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-03-01");
        var table = RealProgram.Run(folder.Path, "next", rides, "--as-of", Demo.AsOf, "--ics", "next.ics");
        var json = RealProgram.Run(folder.Path, "next", rides, "--as-of", Demo.AsOf, "--format", "json");
        Assert.Equal((0, "", 0, ""), (table.Code, table.Error, json.Code, json.Error));
        using var document = JsonDocument.Parse(json.Out);
        Assert.Equal("rideaudit-next/1", document.RootElement.GetProperty("schema").GetString());
        var sessions = document.RootElement.GetProperty("weeks").EnumerateArray().SelectMany(w => w.GetProperty("days").EnumerateArray())
            .SelectMany(d => d.GetProperty("sessions").EnumerateArray().Select(s => (Date: d.GetProperty("date").GetString()!, Kind: s.GetProperty("kind").GetString()))).ToList();
        Assert.NotEmpty(sessions);
        var events = Calendar.Load(File.ReadAllText(folder.At("next.ics")))!.Events;
        Assert.Equal(sessions.Select(s => s.Date), events.Select(e => e.DtStart!.Date.ToString("yyyy-MM-dd", null)));
        foreach (var (day, kind) in sessions)
        {
            var date = DateOnly.Parse(day, null);
            Assert.Matches($@"(?m)^{date:ddd} {date.Day} +{kind} ", table.Out);
        }
    }

    [Fact]
    public void The_plan_table_and_the_workouts_hold_what_the_table_says()
    {
        using var folder = new TempFolder();
        var rides = Demo.CopyTo(folder, from: "2026-03-01");
        var ended = RealProgram.Run(folder.Path, "next", rides, "--as-of", Demo.AsOf, "--plan", "rides/plan.csv", "--workouts", "workouts");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("Wrote rides/plan.csv, workouts/ (", ended.Out, StringComparison.Ordinal);
        var rows = File.ReadAllLines(folder.At("rides/plan.csv")).Where(l => string.CompareOrdinal(l, "2026-06-22") >= 0 && l.StartsWith("2026", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(rows);
        Assert.NotEmpty(Directory.GetFiles(folder.At("workouts"), "2026-06-2*.fit"));

        // Once written the plan is judged as any other: what was laid out breaks nothing.
        var check = RealProgram.Run(folder.Path, "check", "rides", "--as-of", Demo.AsOf, "--fail-on", "broken");
        Assert.Equal((0, ""), (check.Code, check.Error));
        Assert.Contains("Planned for the week of 22 June 2026", check.Out, StringComparison.Ordinal);
    }

    // Ten commutes of 25 minutes a week: the next step is neither an hour and a half of hard riding nor all out.
    [Fact]
    public void A_rider_of_short_easy_rides_is_asked_for_no_jump_and_no_sprints()
    {
        using var folder = new TempFolder();
        var ended = RealProgram.Run(folder.Path, "next", Repository.Path("testdata", "worked", "commuter"), "--as-of", "2026-05-11", "--format", "json");
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        using var document = JsonDocument.Parse(ended.Out);
        var sessions = document.RootElement.GetProperty("weeks").EnumerateArray().SelectMany(w => w.GetProperty("days").EnumerateArray())
            .SelectMany(d => d.GetProperty("sessions").EnumerateArray()).ToList();
        Assert.NotEmpty(sessions);
        Assert.All(sessions, s => Assert.DoesNotContain("all out", s.GetProperty("sentence").GetString(), StringComparison.Ordinal));
        Assert.All(sessions, s => Assert.InRange(s.GetProperty("minutes_to").GetInt32(), 0, 89));
    }

    [Fact]
    public void A_number_of_weeks_that_is_none_is_wrong_use()
    {
        using var folder = new TempFolder();
        var ended = RealProgram.Run(folder.Path, "next", ".", "--weeks", "17");
        Assert.Equal(2, ended.Code);
        Assert.Contains("--weeks takes a whole number from 1 to 16; found '17'.", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rider_without_rides_gets_three_and_no_calendar()
    {
        using var folder = new TempFolder();
        folder.Write("rides/notes.txt", "none");
        Assert.Equal(3, RealProgram.Run(folder.Path, "next", "rides", "--ics", "next.ics").Code);
        Assert.False(File.Exists(folder.At("next.ics")));
    }
}
