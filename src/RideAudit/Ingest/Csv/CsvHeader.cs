using System.Collections.Immutable;
using System.Text;

namespace RideAudit.Ingest.Csv;

/// <summary>Understands a header row.</summary>
internal static class CsvHeader
{
    /// <summary>Finds the columns that are understood; of several for one channel the first counts.</summary>
    /// <param name="headers">The cells of the header row as written, blanks and capitals included.</param>
    /// <param name="map">The rider file's map, channel name → header. What it names counts before anything else.</param>
    public static ImmutableArray<Column> Understand(IReadOnlyList<string> headers, IReadOnlyDictionary<string, string> map)
    {
        var columns = new List<Column>();
        foreach (var (channel, mapped) in map)
            if (IndexOf(headers, mapped) is { } at && Read(channel) is { } named)
                columns.Add(new Column(at, headers[at].Trim(), named.Channel, FactorOf(mapped, named.Channel), false));
        for (var i = 0; i < headers.Count; i++)
            if (!columns.Exists(c => c.Index == i) && Read(headers[i]) is { } found && !columns.Exists(c => c.Channel == found.Channel))
                columns.Add(new Column(i, headers[i].Trim(), found.Channel, found.Factor, found.IsUtc));
        return [.. columns];
    }

    /// <summary>Words in lower case: "Heart Rate (bpm)" → heart, rate, bpm; "speed_kmh" → speed, kmh; "powerW" → power, w.</summary>
    public static IReadOnlyList<string> Split(string header)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        for (var i = 0; i < header.Length; i++)
        {
            var c = header[i];
            var separates = char.IsWhiteSpace(c) || c is '_' or '-' or '(' or ')' or '[' or ']' or '{' or '}' or '.' or ':' or ',' or '\uFEFF';
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

    private static int? IndexOf(IReadOnlyList<string> headers, string wanted)
    {
        for (var i = 0; i < headers.Count; i++)
            if (headers[i].Trim().Equals(wanted.Trim(), StringComparison.OrdinalIgnoreCase))
                return i;
        return null;
    }

    private static (CsvChannel Channel, double Factor, bool IsUtc)? Read(string header)
    {
        var words = Split(header);
        for (var length = words.Count; length > 0; length--)
        {
            var name = string.Concat(words.Take(length));
            if (!CsvSpellings.Names.TryGetValue(name, out var found))
                continue;
            var unit = string.Concat(words.Skip(length));
            if (unit.Length == 0)
                return (found.Channel, found.Factor, CsvSpellings.SaysUtc(name));
            if (UnitFor(unit, found.Channel) is { } factor)
                return (found.Channel, factor, CsvSpellings.SaysUtc(unit));
        }
        return null;
    }

    /// <summary>A mapped header may still carry a unit at its end: "Geschwindigkeit (km/h)".</summary>
    private static double FactorOf(string header, CsvChannel channel)
    {
        var words = Split(header);
        return words.Count > 1 && UnitFor(words[^1], channel) is { } factor ? factor : 1;
    }

    private static double? UnitFor(string unit, CsvChannel channel)
    {
        foreach (var known in CsvSpellings.Units)
            if (known.Name == unit && known.For.Contains(channel))
                return known.Factor;
        return null;
    }

    /// <summary>A column that is understood.</summary>
    /// <param name="Index">Its place, 0 first.</param>
    /// <param name="Header">Its header as written.</param>
    /// <param name="Channel">Of several columns for one channel only the first is kept.</param>
    /// <param name="Factor">To the channel's own unit (s, W, bpm, rpm, m/s, m, min).</param>
    /// <param name="IsUtc">Its times are universal where they do not say otherwise.</param>
    internal readonly record struct Column(int Index, string Header, CsvChannel Channel, double Factor, bool IsUtc);
}
