using System.Collections.Immutable;
using NodaTime;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Reads a rider file (TOML). What the writer of the file did wrong is returned, all of it at once, not thrown.</summary>
public static class RiderFileReader
{
    private static readonly (string, Sex)[] Sexes = [("female", Sex.Female), ("male", Sex.Male), ("unset", Sex.Unset)];

    private static readonly (string, Experience)[] Experiences =
        [("new", Experience.New), ("regular", Experience.Regular), ("racing", Experience.Racing)];

    /// <summary>Channels that the <c>[csv]</c> table may name a column for.</summary>
    public static ImmutableArray<string> CsvChannels { get; } =
        ["time", "power", "heart_rate", "cadence", "speed", "altitude", "distance"];

    /// <summary>Reads the text of a rider file.</summary>
    /// <param name="toml">The text.</param>
    /// <param name="name">The file's name, for the messages.</param>
    /// <param name="ruleIds">The rules that may be set aside; any id is taken when null.</param>
    public static RiderFileResult Read(string toml, string name, IReadOnlyList<string>? ruleIds = null)
    {
        var mistakes = new List<RiderFileMistake>();
        var tree = TomlTree.Parse(toml, name, mistakes);
        var rider = ReadRider(new TomlSection(tree.Root, "", mistakes), ruleIds);
        var ordered = mistakes.OrderBy(m => m.Line).ThenBy(m => m.Column).ToImmutableArray();
        return new RiderFileResult(ordered.IsEmpty ? rider : null, ordered);
    }

    /// <summary>What can be read of a rider file, whatever else is wrong with it.</summary>
    internal static Rider ReadLeniently(string toml)
    {
        var mistakes = new List<RiderFileMistake>();
        return ReadRider(new TomlSection(TomlTree.Parse(toml, "", mistakes).Root, "", mistakes), null);
    }

    private static Rider ReadRider(TomlSection top, IReadOnlyList<string>? ruleIds)
    {
        var rider = new Rider
        {
            Label = top.Text("label", "a short text that is not empty") ?? "Rider",
            TimeZone = ReadZone(top),
            Sex = top.Choice("sex", Sexes) ?? Sex.Unset,
            MassKg = top.Number("mass_kg", 25, 250, "kg"),
            Experience = top.Choice("experience", Experiences) ?? Experience.Regular,
        };
        var thresholds = ReadThresholds(top.TableArray("threshold"));
        var (rest, highest) = ReadHeartRates(top.Table("heart_rate"), thresholds);
        rider = rider with
        {
            Thresholds = [.. thresholds.Select(t => t.Entry)],
            RestHeartRateBpm = rest,
            MaxHeartRateBpm = highest,
            Plan = top.Table("plan") is { } plan ? PlanSection.Read(plan) : new TrainingPlan(),
            Exceptions = DaysSections.ReadExceptions(top.TableArray("exception")),
            Hours = DaysSections.ReadHours(top.TableArray("hours")),
            MinutesFree = DaysSections.ReadMinutesFree(top.Table("days")),
            FixedRides = DaysSections.ReadFixedRides(top.TableArray("fixed")),
            Sessions = DaysSections.ReadSessions(top.TableArray("session")),
            SetAside = DaysSections.ReadSetAside(top.TableArray("set_aside"), ruleIds),
            CsvColumns = ReadColumns(top.Table("csv")),
        };
        top.RejectUnknown();
        return rider;
    }

    private static DateTimeZone? ReadZone(TomlSection top)
    {
        const string Allowed = "an IANA time zone by its place, such as Europe/Lisbon";
        if (top.Text("time_zone", Allowed) is not { } id)
            return null;
        var provider = DateTimeZoneProviders.Tzdb;
        if (provider.Ids.Contains(id))
            return provider[id];
        top.AddAt(top.PlaceOf("time_zone"), $"the unknown time zone \"{TomlWords.Shortened(id)}\"", Allowed, NearestPlace(id));
        return null;
    }

    // An offset such as GMT+1 names no place: the zones nearest in spelling, Etc/GMT+1 and its like, mean the opposite of what is written.
    private static string? NearestPlace(string id) => id.Any(char.IsDigit)
        ? null
        : NearestName.Of(id, DateTimeZoneProviders.Tzdb.Ids.Where(z => z.Contains('/') && !z.StartsWith("Etc/", StringComparison.Ordinal)));

    private static List<(ThresholdEntry Entry, TomlSection Section)> ReadThresholds(List<TomlSection> sections)
    {
        var entries = new List<(ThresholdEntry Entry, TomlSection Section)>();
        foreach (var section in sections)
        {
            var from = section.Date("from");
            var power = section.Number("power_w", RiderFileRanges.ThresholdPower.Least, RiderFileRanges.ThresholdPower.Most, "W");
            var heartRate = section.Number("heart_rate_bpm", RiderFileRanges.ThresholdHeartRate.Least, RiderFileRanges.ThresholdHeartRate.Most, "bpm");
            if (!section.Has("from"))
                section.AddAt(section.Place, "a threshold without from", "from: the date it is in force from");
            if (!section.Has("power_w") && !section.Has("heart_rate_bpm"))
                section.AddAt(section.Place, "a threshold without a value", "power_w, heart_rate_bpm or both");
            section.RejectUnknown();
            if (from is not { } date)
                continue;
            if (entries.Count > 0 && date <= entries[^1].Entry.From)
            {
                var found = date == entries[^1].Entry.From ? "the same date as the threshold before" : "a date before that of the threshold before";
                section.AddAt(section.PlaceOf("from"), found, "thresholds in order of date, each date once");
            }
            entries.Add((new ThresholdEntry(date, power is { } watts ? new Units.Watts(watts) : null, heartRate), section));
        }
        return entries;
    }

    private static (double? Resting, double? Highest) ReadHeartRates(
        TomlSection? section, List<(ThresholdEntry Entry, TomlSection Section)> thresholds)
    {
        if (section is null)
            return (null, null);
        var rest = section.Number("rest_bpm", 25, 120, "bpm");
        var highest = section.Number("max_bpm", 90, 240, "bpm");
        section.RejectUnknown();
        if (highest <= rest)
            section.AddAt(section.PlaceOf("max_bpm"), "max_bpm at or below rest_bpm", "max_bpm above rest_bpm");
        foreach (var (entry, at) in thresholds)
        {
            if (entry.HeartRateBpm is { } bpm && (bpm <= rest || bpm > highest))
                at.AddAt(at.PlaceOf("heart_rate_bpm"), "a threshold heart rate outside the rider’s range", "above rest_bpm and at most max_bpm");
        }
        return (rest, highest);
    }

    private static ImmutableDictionary<string, string> ReadColumns(TomlSection? section)
    {
        var columns = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (section is null)
            return columns.ToImmutable();
        foreach (var channel in CsvChannels)
        {
            if (section.Text(channel, "the column’s header as the CSV file spells it") is { } header)
                columns[channel] = header;
        }
        section.RejectUnknown();
        return columns.ToImmutable();
    }
}
