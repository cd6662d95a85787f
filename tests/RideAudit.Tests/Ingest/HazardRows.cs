using RideAudit.Fit.Messages;

namespace RideAudit.Tests.Ingest;

/// <summary>Rows of the project's hazard list as files, with what reading them must give. Powers are constant, so sums are seconds times watts.</summary>
internal static class HazardRows
{
    private static readonly FitSketch Ride = new();

    private static HazardOutcome Whole { get; } = new([120], 120, 24_000);

    public static IEnumerable<(string Row, byte[] Bytes, HazardOutcome Expected)> All() =>
        [.. Containers(), .. Values(), .. Times(), .. Timers(), .. Structures()];

    private static IEnumerable<(string, byte[], HazardOutcome)> Containers()
    {
        var ride = Ride.Bytes();
        var later = (Ride with { Start = FitSketch.Evening + 86_400 }).Bytes();
        yield return ("A1 zero bytes", [], new([], 0, 0, "empty file"));
        yield return ("A2 a cut header", ride[..10], new([], 0, 0, "no data"));
        yield return ("A5 no summaries", (Ride with { HasSession = false, HasActivity = false }).Bytes(), Whole with { Problems = ["not closed"] });
        yield return ("A8 CRC wrong", [.. ride[..^1], (byte)(ride[^1] ^ 1)], Whole with { Problems = ["checksum"] });
        yield return ("A17 junk behind", [.. ride, .. new byte[100]], Whole with { Problems = ["extra bytes"] });
        yield return ("A21 a second part cut", [.. ride, .. later[..20]], Whole with { Problems = ["truncated"] });
        yield return ("A22 two activities", [.. ride, .. later], new([120, 120], 240, 48_000));
        yield return ("A22 the same activity twice", [.. ride, .. ride], Whole with { Problems = ["duplicate"] });
        yield return ("A24 a web page", "<!DOCTYPE html><html><body>Sign in</body></html>"u8.ToArray(), new([], 0, 0, "not a ride"));
        yield return ("A24 JSON", "{\"error\":\"not found\"}"u8.ToArray(), new([], 0, 0, "not a ride"));
        yield return ("A24 plain text", "not found"u8.ToArray(), new([], 0, 0, "not a ride"));
        yield return ("A27 a settings file", (Ride with { Type = FitFileType.Settings, Seconds = 0, HasSession = false, HasActivity = false, Timer = [] }).Bytes(), new([], 0, 0, "not a ride"));
        yield return ("A27 a course", (Ride with { Type = FitFileType.Course }).Bytes(), new([], 0, 0, "not a ride"));
    }

    private static IEnumerable<(string, byte[], HazardOutcome)> Values()
    {
        yield return ("C11 power only in a developer field", (Ride with { Power = _ => null, HasDeveloperPower = true, DeveloperPower = _ => 222 }).Bytes(), new([120], 120, 120 * 222));
        yield return ("C12 native power wins, the developer's fills", (Ride with { Power = i => i < 60 ? 200 : null, HasDeveloperPower = true, DeveloperPower = _ => 300 }).Bytes(), new([120], 120, 60 * 200 + 60 * 300));
        yield return ("C11 a dead native field beside a developer field", (Ride with { Power = _ => 0, HasDeveloperPower = true, DeveloperPower = _ => 222 }).Bytes(), new([120], 120, 120 * 222));
        yield return ("D2 power always invalid", (Ride with { Power = _ => null }).Bytes(), new([120], 0, 0));
        yield return ("D3 power always 0", (Ride with { Power = _ => 0 }).Bytes(), new([120], 0, 0));
        yield return ("D4 coasting counts", (Ride with { Power = i => i % 2 == 0 ? 200 : 0 }).Bytes(), new([120], 120, 60 * 200));
        yield return ("D4 a dropout of 20 s is missing", (Ride with { Power = i => i is >= 50 and < 70 ? null : 200 }).Bytes(), new([120], 100, 100 * 200));
        yield return ("D4 a dropout of 3 s is held", (Ride with { Power = i => i is >= 50 and < 53 ? null : 200 }).Bytes(), Whole);
    }

    private static IEnumerable<(string, byte[], HazardOutcome)> Times()
    {
        uint At(int i) => FitSketch.Evening + (uint)i;
        yield return ("E2 clock set in mid-ride", (Ride with { TimeOf = i => i < 40 ? 1000 + (uint)i : At(i), EventsLast = true, Timer = [(120, 4)] }).Bytes(), Whole);
        yield return ("E2 clock set in mid-ride, with the first start on the old clock", (Ride with { TimeOf = i => i < 40 ? 1000 + (uint)i : At(i), Timer = [((int)(1000 - (long)FitSketch.Evening), 0), (120, 4)] }).Bytes(), Whole);
        yield return ("E2 three days behind until the satellites were found", (Ride with { TimeOf = i => i < 40 ? At(i) - 3 * 86_400 : At(i), Timer = [(-3 * 86_400, 0), (120, 4)] }).Bytes(), Whole);
        yield return ("E2 a last record 60 years on", (Ride with { TimeOf = i => i < 119 ? At(i) : At(i) + 60 * 31_557_600u }).Bytes(), Whole with { Problems = ["damaged"] });
        yield return ("E2 one record in the middle 10 years on", (Ride with { TimeOf = i => i == 60 ? At(i) + 315_576_000 : At(i) }).Bytes(), Whole with { Problems = ["damaged"] });
        yield return ("E3 clock set back by an hour", (Ride with { Timer = [], TimeOf = i => i < 60 ? At(i + 3600) : At(i) }).Bytes(), Whole);
        yield return ("E3 clock set back by 90 s", (Ride with { Timer = [], TimeOf = i => i < 60 ? At(i + 90) : At(i) }).Bytes(), Whole);
        yield return ("E3 all records written twice", (Ride with { Seconds = 240, TimeOf = i => At(i % 120), Timer = [(0, 0), (120, 4)], Session = s => s with { TotalTimerSeconds = 120, TotalElapsedSeconds = 120 } }).Bytes(), Whole);
        yield return ("E3 two steps back by a second", (Ride with { TimeOf = i => i is 30 or 60 ? At(i - 2) : At(i) }).Bytes(), Whole);
        yield return ("E4 every time twice, the later value counts", (Ride with { Seconds = 240, TimeOf = i => At(i / 2), Power = i => i % 2 == 0 ? 100 : 200, Timer = [(0, 0), (120, 4)], Session = s => s with { TotalTimerSeconds = 120, TotalElapsedSeconds = 120 } }).Bytes(), Whole);
        yield return ("E5 power in one record, heart rate in the next", (Ride with { Seconds = 240, TimeOf = i => At(i / 2), Power = i => i % 2 == 0 ? 200 : null, HeartRate = i => i % 2 == 0 ? null : 140, Timer = [(0, 0), (120, 4)], Session = s => s with { TotalTimerSeconds = 120, TotalElapsedSeconds = 120 } }).Bytes(), Whole);
        yield return ("E11 a record every 5 s", (Ride with { TimeOf = i => i % 5 == 0 ? At(i) : null }).Bytes(), Whole);
        yield return ("E12 30 s without records while the timer runs", (Ride with { TimeOf = i => i is > 40 and <= 70 ? null : At(i) }).Bytes(), new([120], 90, 90 * 200));
        yield return ("E13 left on: elapsed far above timer", (Ride with { Timer = [(0, 0), (120, 4)], Session = s => s with { TotalElapsedSeconds = 34_752 } }).Bytes(), Whole);
        yield return ("E14, E15 a timer time that contradicts the records", (Ride with { Session = s => s with { TotalTimerSeconds = 13_471 } }).Bytes(), Whole);
        yield return ("E21 a file made six days later", (Ride with { Before = w => w.WriteFileId(new FitFileId(FitFileType.Activity, 255, 0, FitSketch.Evening + 518_400)) }).Bytes(), Whole);
    }

    private static IEnumerable<(string, byte[], HazardOutcome)> Timers()
    {
        foreach (var stop in new byte[] { 1, 4, 8, 9 })
            yield return ($"E9 a pause by stop type {stop}", Paused([(0, 0), (40, stop), (80, 0), (120, stop)]).Bytes(), new([80], 80, 80 * 200));
        yield return ("E6 records before the first start", (Ride with { Timer = [(50, 0), (120, 4)], Session = s => s with { StartTime = FitSketch.Evening + 50, TotalTimerSeconds = 70, TotalElapsedSeconds = 70 } }).Bytes(), new([70], 70, 70 * 200));
        yield return ("E7 the first event is a stop", Paused([(40, 4), (80, 0), (120, 4)]).Bytes(), new([80], 80, 80 * 200));
        yield return ("E7 the last start has no stop", Paused([(0, 0), (40, 4), (80, 0)]).Bytes(), new([80], 80, 80 * 200));
        yield return ("E7 start, stop, start at the first record", (Ride with { Timer = [(0, 0), (0, 4), (0, 0), (120, 4)] }).Bytes(), Whole);
        yield return ("E8 no timer events: a silence of 40 s is a pause", Paused([]).Bytes(), new([80], 80, 80 * 200));
        yield return ("E8 no timer events, timer time over all of it: a silence is missing data", (Paused([]) with { Session = s => s }).Bytes(), new([120], 80, 80 * 200));
        yield return ("E10 one record in mid-pause", (Paused([(0, 0), (40, 4), (80, 0), (120, 4)]) with { TimeOf = i => i is >= 40 and < 80 and not 60 ? null : FitSketch.Evening + (uint)i }).Bytes(), new([80], 80, 80 * 200));
        yield return ("F4 all events at the end", (Paused([(0, 0), (40, 4), (80, 0), (120, 4)]) with { EventsLast = true }).Bytes(), new([80], 80, 80 * 200));
    }

    private static IEnumerable<(string, byte[], HazardOutcome)> Structures()
    {
        yield return ("F1 no session", (Ride with { HasSession = false }).Bytes(), Whole with { Problems = ["not closed"] });
        yield return ("F2 no activity message", (Ride with { HasActivity = false }).Bytes(), Whole);
        yield return ("F3 summary first", (Ride with { SummaryFirst = true }).Bytes(), Whole);
        yield return ("F3 the session written first and last", (Ride with { SummaryFirst = true, Before = w => w.WriteSession(new FitSession { StartTime = FitSketch.Evening, Sport = 2, TotalTimerSeconds = 1 }) }).Bytes(), Whole);
        yield return ("F5 swim, ride, run", (Ride with { Seconds = 300, Sessions = [(5, 0, 100), (2, 100, 120), (1, 220, 80)] }).Bytes(), new([100, 120, 80], 120, 24_000));
        yield return ("F5 sessions out of order", (Ride with { Seconds = 300, Sessions = [(1, 220, 80), (2, 100, 120), (5, 0, 100)] }).Bytes(), new([100, 120, 80], 120, 24_000));
        yield return ("F6 generic with power", (Ride with { Sport = 0 }).Bytes(), new([120], 0, 0, "other activity"));
        yield return ("no sport at all", (Ride with { Sport = null }).Bytes(), Whole);
        yield return ("an e-bike", (Ride with { SubSport = 28 }).Bytes(), new([120], 0, 0));
        yield return ("sport e-biking", (Ride with { Sport = 21 }).Bytes(), new([120], 0, 0));
        yield return ("a session without records", (Ride with { TimeOf = _ => null, Session = s => s with { TotalTimerSeconds = 3600, TotalElapsedSeconds = 4000 } }).Bytes(), new([3600], 0, 0));
        yield return ("neither records nor totals", (Ride with { TimeOf = _ => null, HasSession = false }).Bytes(), new([], 0, 0, "no records"));
    }

    /// <summary>Records for 40 s, none for 40 s, records for 40 s, and totals that say so.</summary>
    private static FitSketch Paused(IReadOnlyList<(int, byte)> timer) => Ride with
    {
        Timer = timer,
        TimeOf = i => i is >= 40 and < 80 ? null : FitSketch.Evening + (uint)i,
        Session = s => s with { TotalTimerSeconds = 80, TotalElapsedSeconds = 120 },
    };
}
