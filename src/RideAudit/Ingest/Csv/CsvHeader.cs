using System.Collections.Immutable;
using System.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Understands the usual header spellings, with or without units. docs/formats.md lists them all.</summary>
internal static class CsvHeader
{
    private static readonly Dictionary<string, CsvChannel> Names = new()
    {
        ["seconds"] = CsvChannel.Time, ["secs"] = CsvChannel.Time, ["sec"] = CsvChannel.Time, ["s"] = CsvChannel.Time,
        ["time"] = CsvChannel.Time, ["timestamp"] = CsvChannel.Time, ["datetime"] = CsvChannel.Time, ["utc"] = CsvChannel.Time,
        ["elapsed"] = CsvChannel.Time, ["elapsedtime"] = CsvChannel.Time, ["elapsedseconds"] = CsvChannel.Time, ["clock"] = CsvChannel.Time,
        ["power"] = CsvChannel.Power, ["watts"] = CsvChannel.Power, ["watt"] = CsvChannel.Power, ["pwr"] = CsvChannel.Power,
        ["heartrate"] = CsvChannel.HeartRate, ["hr"] = CsvChannel.HeartRate, ["bpm"] = CsvChannel.HeartRate, ["pulse"] = CsvChannel.HeartRate,
        ["cadence"] = CsvChannel.Cadence, ["cad"] = CsvChannel.Cadence, ["rpm"] = CsvChannel.Cadence,
        ["speed"] = CsvChannel.Speed, ["velocity"] = CsvChannel.Speed,
        ["altitude"] = CsvChannel.Altitude, ["alt"] = CsvChannel.Altitude, ["elevation"] = CsvChannel.Altitude, ["ele"] = CsvChannel.Altitude,
        ["distance"] = CsvChannel.Distance, ["dist"] = CsvChannel.Distance,
        ["date"] = CsvChannel.Date, ["day"] = CsvChannel.Date,
        ["start"] = CsvChannel.Start, ["starttime"] = CsvChannel.Start,
        ["minutes"] = CsvChannel.Minutes, ["duration"] = CsvChannel.Minutes, ["min"] = CsvChannel.Minutes, ["mins"] = CsvChannel.Minutes,
        ["averagepower"] = CsvChannel.AveragePower, ["avgpower"] = CsvChannel.AveragePower, ["meanpower"] = CsvChannel.AveragePower,
        ["normalisedpower"] = CsvChannel.NormalisedPower, ["normalizedpower"] = CsvChannel.NormalisedPower,
        ["averageheartrate"] = CsvChannel.AverageHeartRate, ["avgheartrate"] = CsvChannel.AverageHeartRate,
        ["meanheartrate"] = CsvChannel.AverageHeartRate, ["avghr"] = CsvChannel.AverageHeartRate,
        ["rating"] = CsvChannel.Rating, ["rpe"] = CsvChannel.Rating, ["sessionrating"] = CsvChannel.Rating,
        ["note"] = CsvChannel.Note, ["notes"] = CsvChannel.Note, ["comment"] = CsvChannel.Note,
    };

    private static readonly (string Unit, double Factor, CsvChannel? Only)[] Units =
    [
        ("km/h", 1 / 3.6, CsvChannel.Speed), ("kmh", 1 / 3.6, CsvChannel.Speed), ("kph", 1 / 3.6, CsvChannel.Speed),
        ("mph", 0.44704, CsvChannel.Speed), ("m/s", 1, CsvChannel.Speed), ("mps", 1, CsvChannel.Speed), ("ms", 1, CsvChannel.Speed),
        ("km", 1000, CsvChannel.Distance), ("miles", 1609.344, CsvChannel.Distance), ("mi", 1609.344, CsvChannel.Distance),
        ("metres", 1, null), ("meters", 1, null), ("ft", 0.3048, null), ("feet", 0.3048, null), ("m", 1, null),
        ("watts", 1, null), ("w", 1, null), ("bpm", 1, null), ("rpm", 1, null),
        ("hours", 60, CsvChannel.Minutes), ("h", 60, CsvChannel.Minutes), ("min", 1, CsvChannel.Minutes), ("minutes", 1, CsvChannel.Minutes),
        ("seconds", 1, null), ("secs", 1, null), ("s", 1, null), ("utc", 1, CsvChannel.Time), ("iso", 1, CsvChannel.Time), ("iso8601", 1, CsvChannel.Time),
        ("0-10", 1, CsvChannel.Rating),
    ];

    /// <summary>Finds the columns that are understood; of several for one channel the first counts.</summary>
    /// <param name="headers">The header row.</param>
    /// <param name="map">The rider file's map: channel name → header.</param>
    public static ImmutableArray<CsvColumn> Understand(IReadOnlyList<string> headers, IReadOnlyDictionary<string, string> map)
    {
        var columns = ImmutableArray.CreateBuilder<CsvColumn>();
        var mapped = map.ToLookup(m => m.Value.Trim(), m => m.Key, StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < headers.Count; i++)
        {
            var header = headers[i].Trim().Trim('\uFEFF');
            // A header named in the rider file's map holds what the map says, whatever its own words.
            var spelling = mapped[header].FirstOrDefault() ?? header;
            if (Read(spelling) is { } found && !columns.Any(c => c.Channel == found.Channel))
                columns.Add(new CsvColumn(i, header, found.Channel, found.Factor));
        }
        return columns.ToImmutable();
    }

    private static (CsvChannel Channel, double Factor)? Read(string header)
    {
        var words = Split(header);
        for (var nameLength = words.Count; nameLength > 0; nameLength--)
        {
            if (!Names.TryGetValue(string.Concat(words.Take(nameLength)), out var channel))
                continue;
            var unit = string.Concat(words.Skip(nameLength));
            if (unit.Length == 0)
                return (channel, 1);
            foreach (var (name, factor, only) in Units)
                if (unit == name && (only is null || only == channel))
                    return (channel, factor);
        }
        return null;
    }

    /// <summary>Words in lower case: "Heart Rate (bpm)" → heart, rate, bpm; "speed_kmh" → speed, kmh; "powerW" → power, w.</summary>
    private static List<string> Split(string header)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        for (var i = 0; i < header.Length; i++)
        {
            var c = header[i];
            var separates = c is ' ' or '_' or '(' or ')' or '[' or ']' or '.' or ':';
            var humps = i > 0 && char.IsUpper(c) && char.IsLower(header[i - 1]);
            if ((separates || humps) && word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
            if (!separates)
                word.Append(char.ToLowerInvariant(c));
        }
        if (word.Length > 0)
            words.Add(word.ToString());
        return words;
    }
}
