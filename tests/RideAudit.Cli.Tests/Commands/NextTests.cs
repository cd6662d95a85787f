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
        var ridden = document.RootElement.GetProperty("days").EnumerateArray().Where(d => d.GetProperty("minutes").GetInt32() > 0).ToList();
        Assert.NotEmpty(ridden);
        var events = Calendar.Load(File.ReadAllText(folder.At("next.ics")))!.Events;
        Assert.Equal(ridden.Select(d => d.GetProperty("date").GetString()), events.Select(e => e.DtStart!.Date.ToString("yyyy-MM-dd", null)));
        foreach (var day in ridden)
        {
            var date = DateOnly.Parse(day.GetProperty("date").GetString()!, null);
            Assert.Matches($@"(?m)^{date:ddd} {date.Day} +{day.GetProperty("kind").GetString()} ", table.Out);
        }
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
