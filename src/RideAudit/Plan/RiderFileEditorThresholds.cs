using NodaTime;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Changes a rider file's dated thresholds, or adds one in its place among them.</summary>
internal static class RiderFileEditorThresholds
{
    private const string Name = "threshold";

    public static void Set(TomlEditor editor, Rider rider, RiderFileEdit edit, LocalDate firstRide)
    {
        if (!edit.ThresholdPowerW.Given && !edit.ThresholdHeartRateBpm.Given)
            return;
        var entries = rider.Thresholds;
        // Entries without a date cannot be told apart: a file that has them is left for its writer to mend.
        if (entries.Length != editor.Entries(Name).Count)
            return;
        var from = edit.ThresholdFrom ?? (entries.IsEmpty ? firstRide : entries[^1].From);
        if (entries.FirstOrDefault(e => e.From == from) is { } entry)
            Change(editor, entries.IndexOf(entry), entry, edit);
        else
            Add(editor, entries.Count(e => e.From < from), from, edit);
    }

    private static void Add(TomlEditor editor, int index, LocalDate from, RiderFileEdit edit)
    {
        var lines = new List<string> { $"from = {TomlValues.Date(from)}" };
        if (edit.ThresholdPowerW.Value is { } power)
            lines.Add($"power_w = {TomlValues.Number(power)}");
        if (edit.ThresholdHeartRateBpm.Value is { } heartRate)
            lines.Add($"heart_rate_bpm = {TomlValues.Number(heartRate)}");
        if (lines.Count > 1)
            editor.AddEntry(Name, index, lines);
    }

    private static void Change(TomlEditor editor, int index, ThresholdEntry entry, RiderFileEdit edit)
    {
        var power = edit.ThresholdPowerW.Given ? edit.ThresholdPowerW.Value : entry.Power?.Value;
        var heartRate = edit.ThresholdHeartRateBpm.Given ? edit.ThresholdHeartRateBpm.Value : entry.HeartRateBpm;
        if (power is null && heartRate is null)
        {
            editor.RemoveEntry(Name, index);
            return;
        }
        Change(editor, index, "power_w", power, entry.Power?.Value);
        Change(editor, index, "heart_rate_bpm", heartRate, entry.HeartRateBpm);
    }

    private static void Change(TomlEditor editor, int index, string key, double? asked, double? there)
    {
        if (asked == there)
            return;
        if (asked is null)
            editor.TakeOutOf(Name, index, key);
        else
            editor.SetIn(Name, index, key, TomlValues.Number(asked));
    }
}
