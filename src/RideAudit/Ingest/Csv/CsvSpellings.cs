using System.Collections.Frozen;
using static RideAudit.Ingest.Csv.CsvChannel;

namespace RideAudit.Ingest.Csv;

/// <summary>Every header spelling and unit that is understood. docs/formats.md lists them, and a test keeps the two in step.</summary>
internal static class CsvSpellings
{
    public const double MetresPerMile = 1609.344;
    public const double MetresPerFoot = 0.3048;

    /// <summary>Names in lower case without blanks; the factor is that of a name which is a unit itself.</summary>
    public static FrozenDictionary<string, (CsvChannel Channel, double Factor)> Names { get; } = new (CsvChannel Channel, string Spellings)[]
    {
        (Time, "time timestamp timestamputc datetime dateandtime localtime utc clock seconds secs sec s t elapsed elapsedtime elapsedseconds timertime ridetime"),
        (Power, "power watts watt w pwr powerinwatts"),
        (HeartRate, "heartrate hr bpm pulse heartratebpm"),
        (Cadence, "cadence cad rpm"),
        (Speed, "speed velocity enhancedspeed"),
        (Altitude, "altitude alt elevation ele height enhancedaltitude"),
        (Distance, "distance dist"),
        (Date, "date day ridedate"),
        (Start, "start starttime startedat"),
        (Minutes, "minutes min mins duration durationminutes ridingtime movingtime"),
        (AveragePower, "averagepower avgpower meanpower avepower averagewatts avgwatts"),
        (NormalisedPower, "normalisedpower normalizedpower"),
        (AverageHeartRate, "averageheartrate avgheartrate meanheartrate aveheartrate averagehr avghr meanhr"),
        (Rating, "rating rpe sessionrating effort perceivedexertion"),
        (Kind, "kind ridekind"),
        (RideFile, "file filename ridefile"),
        (Note, "note notes comment comments remark remarks"),
    }
        .SelectMany(c => c.Spellings.Split(' ').Select(s => (Spelling: s, Value: (c.Channel, 1.0))))
        .Concat([("kph", (Speed, 1 / 3.6)), ("kmh", (Speed, 1 / 3.6)), ("km/h", (Speed, 1 / 3.6)), ("mph", (Speed, 0.44704)), ("m/s", (Speed, 1)), ("km", (Distance, 1000)), ("hours", (Minutes, 60))])
        .ToFrozenDictionary(s => s.Item1, s => s.Item2);

    public static IReadOnlyList<Unit> Units { get; } =
    [
        new("w", 1, Power, AveragePower, NormalisedPower), new("watt", 1, Power, AveragePower, NormalisedPower), new("watts", 1, Power, AveragePower, NormalisedPower),
        new("bpm", 1, HeartRate, AverageHeartRate), new("1/min", 1, HeartRate, AverageHeartRate, Cadence), new("rpm", 1, Cadence),
        new("m/s", 1, Speed), new("mps", 1, Speed), new("ms", 1, Speed), new("km/h", 1 / 3.6, Speed), new("kmh", 1 / 3.6, Speed), new("kph", 1 / 3.6, Speed), new("mph", 0.44704, Speed),
        new("m", 1, Altitude, Distance), new("metres", 1, Altitude, Distance), new("meters", 1, Altitude, Distance),
        new("ft", MetresPerFoot, Altitude, Distance), new("feet", MetresPerFoot, Altitude, Distance),
        new("km", 1000, Distance), new("mi", MetresPerMile, Distance), new("miles", MetresPerMile, Distance),
        new("s", 1, Time), new("sec", 1, Time), new("secs", 1, Time), new("seconds", 1, Time), new("ms", 0.001, Time), new("min", 60, Time), new("h", 3600, Time),
        new("utc", 1, Time, Start), new("gmt", 1, Time, Start), new("local", 1, Time, Start), new("iso", 1, Time), new("iso8601", 1, Time, Date), new("unix", 1, Time),
        new("hhmmss", 1, Time, Start, Minutes), new("hmmss", 1, Time, Minutes), new("hhmm", 1, Start, Minutes), new("hmm", 1, Start, Minutes),
        new("min", 1, Minutes), new("mins", 1, Minutes), new("minutes", 1, Minutes), new("h", 60, Minutes), new("hours", 60, Minutes),
        new("s", 1 / 60.0, Minutes), new("sec", 1 / 60.0, Minutes), new("seconds", 1 / 60.0, Minutes),
        new("010", 1, Rating), new("110", 1, Rating),
    ];

    /// <summary>Names and units after which a time without offset is universal.</summary>
    public static bool SaysUtc(string word) => word is "utc" or "gmt" or "timestamputc";

    /// <summary>A unit that a header may carry.</summary>
    /// <param name="Name">Its spelling in lower case, without blanks.</param>
    /// <param name="Factor">To the channel's own unit.</param>
    /// <param name="For">Channels that may carry it; after others it means something else.</param>
    internal readonly record struct Unit(string Name, double Factor, params CsvChannel[] For);
}
