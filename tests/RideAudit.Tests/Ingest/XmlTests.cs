using System.Text;
using NodaTime;
using RideAudit.Rides;

namespace RideAudit.Tests.Ingest;

public sealed class XmlTests
{
    private static Recording Single(string name, string text) => Assert.Single(Reading.Of(name, text).Recordings);

    [Theory]
    [InlineData("ride.tcx")]
    [InlineData("ride.xml")]
    [InlineData("ride")]
    public void A_TCX_recording_gives_every_channel_it_has(string name)
    {
        var recording = Single(name, XmlSketch.Tcx(120));
        Assert.Equal(1_778_000_400, recording.Start.ToUnixTimeSeconds());
        Assert.Equal((120.0, 24_000.0), (recording.TimerSeconds, Reading.PowerSum(recording)));
        Assert.Equal(OffsetSource.RiderZone, recording.OffsetFrom);
        var grid = recording.Grid;
        Assert.All(grid.HeartRateBpm!, v => Assert.Equal(140, v));
        Assert.All(grid.CadenceRpm!, v => Assert.Equal(90, v));
        Assert.All(grid.SpeedMps!, v => Assert.Equal(10, v));
        Assert.Equal(1190, grid.DistanceM);
    }

    [Fact]
    public void A_GPX_recording_gives_every_channel_it_has()
    {
        var recording = Single("ride.gpx", XmlSketch.Gpx(120));
        Assert.Equal((120.0, 24_000.0), (recording.TimerSeconds, Reading.PowerSum(recording)));
        Assert.All(recording.Grid.HeartRateBpm!, v => Assert.Equal(140, v));
        Assert.All(recording.Grid.CadenceRpm!, v => Assert.Equal(90, v));
        Assert.Equal(1_778_000_400, recording.Start.ToUnixTimeSeconds());
    }

    [Theory]
    [InlineData("<power>222</power>")]
    [InlineData("<pwr:PowerInWatts xmlns:pwr=\"urn:x\">222</pwr:PowerInWatts>")]
    [InlineData("<a:b xmlns:a=\"urn:x\"><a:c><a:watts>222</a:watts></a:c></a:b>")]
    [InlineData("<power><![CDATA[222]]></power>")]
    public void Power_in_a_GPX_file_is_known_by_its_local_name(string extension) =>
        Assert.Equal(60 * 222, Reading.PowerSum(Single("ride.gpx", XmlSketch.Gpx(60, extensions: _ => extension))));

    [Fact]
    public void A_silence_over_10_s_in_a_GPX_file_is_a_pause()
    {
        var recording = Single("ride.gpx", XmlSketch.Gpx(120, has: i => i is < 40 or >= 80));
        Assert.Equal((80.0, 120.0), (recording.TimerSeconds, recording.ElapsedSeconds));
    }

    [Fact]
    public void Lap_times_over_all_of_a_TCX_file_make_a_silence_missing_data()
    {
        var recording = Single("ride.tcx", XmlSketch.Tcx(120, track: i => i is < 40 or >= 80 ? XmlSketch.TcxPoint(i) : ""));
        Assert.Equal((120.0, 80), (recording.TimerSeconds, Reading.PowerCount(recording)));
    }

    [Fact]
    public void A_new_track_after_a_silence_in_a_TCX_file_is_a_pause()
    {
        var recording = Single("ride.tcx", XmlSketch.Tcx(120, track: i => i is < 40 or > 80 ? XmlSketch.TcxPoint(i) : i == 80 ? "</Track><Track>" + XmlSketch.TcxPoint(i) : ""));
        Assert.Equal((80.0, 120.0), (recording.TimerSeconds, recording.ElapsedSeconds));
    }

    [Theory]
    [InlineData("cycling", RideSport.Cycling)]
    [InlineData("Ride", RideSport.Cycling)]
    [InlineData("road_biking", RideSport.Road)]
    [InlineData("gravel_cycling", RideSport.Gravel)]
    [InlineData("VirtualRide", RideSport.Virtual)]
    [InlineData("EBikeRide", RideSport.EBike)]
    [InlineData("mountain_biking", RideSport.Mountain)]
    [InlineData("running", RideSport.Other)]
    [InlineData("trail_running", RideSport.Other)]
    [InlineData("road_running", RideSport.Other)]
    [InlineData("hiking", RideSport.Other)]
    [InlineData(null, RideSport.Cycling)]
    public void The_type_of_a_GPX_track_tells_the_sport(string? type, RideSport expected) =>
        Assert.Equal(expected, Single("ride.gpx", XmlSketch.Gpx(60, type)).Sport);

    [Theory]
    [InlineData("Biking", RideSport.Cycling)]
    [InlineData("Running", RideSport.Other)]
    [InlineData("Other", RideSport.Other)]
    public void The_sport_of_a_TCX_activity_is_read(string sport, RideSport expected) =>
        Assert.Equal(expected, Single("ride.tcx", XmlSketch.Tcx(60, sport)).Sport);

    [Fact]
    public void An_e_bikes_power_is_not_used_here_either()
    {
        var recording = Single("ride.gpx", XmlSketch.Gpx(60, "EBikeRide"));
        Assert.Null(recording.Grid.PowerW);
        Assert.Contains(recording.Remarks, r => r.StartsWith("E-bike", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_tracks_are_two_recordings()
    {
        var text = XmlSketch.Gpx(60).Replace("</gpx>", "<trk><trkseg>" + string.Concat(Enumerable.Range(7200, 60).Select(i => $"<trkpt lat=\"1\" lon=\"2\"><time>{XmlSketch.At(i)}</time></trkpt>")) + "</trkseg></trk></gpx>");
        Assert.Equal(["two.gpx", "two.gpx#2"], Reading.Of("two.gpx", text).Recordings.Select(r => r.File));
    }

    [Fact]
    public void A_cut_file_keeps_the_points_before_the_break()
    {
        var text = XmlSketch.Gpx(120);
        var read = Reading.Of("ride.gpx", text[..(text.Length / 2)]);
        Assert.InRange(Assert.Single(read.Recordings).TimerSeconds, 40, 80);
        Assert.Equal("truncated", Assert.Single(read.Notices).Problem);
    }

    [Fact]
    public void Blanks_and_a_byte_order_mark_before_the_declaration_are_no_fault()
    {
        Assert.Single(Reading.Of("ride.tcx", "          " + XmlSketch.Tcx(60)).Recordings);
        Assert.Single(Reading.Of("ride.tcx", "\uFEFF\r\n" + XmlSketch.Tcx(60)).Recordings);
    }

    [Fact]
    public void XML_in_UTF_16_is_read_though_it_says_UTF_8() =>
        Assert.Single(Reading.Of("ride.gpx", (byte[])[0xFF, 0xFE, .. Encoding.Unicode.GetBytes(XmlSketch.Gpx(60))]).Recordings);

    [Fact]
    public void A_document_type_is_refused_so_that_no_entity_can_grow_or_reach_outside()
    {
        var text = XmlSketch.Gpx(60).Replace("<gpx ", "<!DOCTYPE gpx [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><gpx ");
        var read = Reading.Of("ride.gpx", text);
        Assert.Empty(read.Recordings);
        Assert.True(Assert.Single(read.Notices).Unusable);
    }

    [Fact]
    public void A_route_without_times_is_named_as_one()
    {
        var notice = Assert.Single(Reading.Of("route.gpx", "<gpx><trk><trkseg><trkpt lat=\"1\" lon=\"2\"><ele>3</ele></trkpt><trkpt lat=\"1\" lon=\"2\"/></trkseg></trk></gpx>").Notices);
        Assert.Contains("a route without times", notice.Sentence);
    }

    [Fact]
    public void A_course_in_TCX_is_no_ride() =>
        Assert.Equal("not a ride", Assert.Single(Reading.Of("course.tcx", "<TrainingCenterDatabase><Courses><Course><Track><Trackpoint><Time>2026-05-05T17:00:00Z</Time></Trackpoint></Track></Course></Courses></TrainingCenterDatabase>").Notices).Problem);

    [Fact]
    public void A_TCX_activity_without_points_counts_its_hours()
    {
        var recording = Single("ride.tcx", "<TrainingCenterDatabase><Activities><Activity Sport=\"Biking\"><Lap StartTime=\"2026-05-05T17:00:00Z\"><TotalTimeSeconds>1800</TotalTimeSeconds></Lap><Lap StartTime=\"2026-05-05T17:30:00Z\"><TotalTimeSeconds>1800</TotalTimeSeconds></Lap></Activity></Activities></TrainingCenterDatabase>");
        Assert.Equal((3600.0, 1_778_000_400L), (recording.TimerSeconds, recording.Start.ToUnixTimeSeconds()));
    }

    [Fact]
    public void An_offset_in_the_timestamps_is_the_rides_own() =>
        Assert.Equal(Offset.FromHours(2), Single("ride.gpx", "<gpx><trk><trkseg><trkpt><time>2026-05-05T19:00:00+02:00</time></trkpt><trkpt><time>2026-05-05T19:00:01+02:00</time></trkpt></trkseg></trk></gpx>").Offset);

    [Fact]
    public void A_value_that_is_no_number_is_missing_and_counted()
    {
        var read = Reading.Of("ride.tcx", XmlSketch.Tcx(60, track: i => XmlSketch.TcxPoint(i, i == 30 ? "lots" : "200")));
        Assert.Single(read.Recordings);
        Assert.Contains("1 value is no number", Assert.Single(read.Notices).Sentence);
    }

    [Fact]
    public void Other_XML_is_named_where_its_name_promised_a_ride()
    {
        Assert.Contains("neither TCX nor GPX", Assert.Single(Reading.Of("ride.gpx", "<kml/>").Notices).Sentence);
        Assert.Empty(Reading.Of("ride.kml", "<kml/>").Notices);
    }
}
