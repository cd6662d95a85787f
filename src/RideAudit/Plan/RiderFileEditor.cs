using NodaTime;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Changes a rider file in place: every line, comment, limit, exception and older threshold that is not asked about stays byte for byte.</summary>
public static class RiderFileEditor
{
    /// <summary>Makes the changes.</summary>
    /// <param name="toml">The file's text, valid TOML; empty for a new file.</param>
    /// <param name="edit">What is to change. An answer equal to what the file says changes nothing.</param>
    /// <param name="firstRide">The first ride's date: a first threshold is in force from it on, so that no ride is left without one.</param>
    /// <returns>
    /// The text. Whether it is a rider file is told by <see cref="RiderFileReader"/>: an answer out of range is written and found there.
    /// A text that is not TOML comes back as it was.
    /// </returns>
    public static string Apply(string toml, RiderFileEdit edit, LocalDate firstRide)
    {
        ArgumentNullException.ThrowIfNull(toml);
        ArgumentNullException.ThrowIfNull(edit);
        var mistakes = new List<RiderFileMistake>();
        if (TomlTree.Parse(toml, "", mistakes).BrokenLines.Count > 0)
            return toml;
        var rider = RiderFileReader.ReadLeniently(toml);
        var editor = new TomlEditor(toml);
        SetRider(editor, rider, edit);
        RiderFileEditorThresholds.Set(editor, rider, edit, firstRide);
        SetHeartRates(editor, rider, edit);
        SetPlan(editor, rider, edit);
        foreach (var (channel, header) in edit.CsvColumns)
            Set(editor, "csv", channel, header, rider.CsvColumns.GetValueOrDefault(channel), TomlValues.Text);
        if (edit.Exceptions is { } exceptions)
            RiderFileEditorExceptions.Set(editor, exceptions);
        return editor.Text;
    }

    private static void SetRider(TomlEditor editor, Rider rider, RiderFileEdit edit)
    {
        Set(editor, "", "label", edit.Label, rider.Label, TomlValues.Text);
        Set(editor, "", "time_zone", edit.TimeZone, rider.TimeZone?.Id, TomlValues.Text);
        Set(editor, "", "sex", edit.Sex, rider.Sex, s => TomlValues.Word(s!.Value));
        Set(editor, "", "mass_kg", edit.MassKg, rider.MassKg, TomlValues.Number);
        Set(editor, "", "experience", edit.Experience, rider.Experience, e => TomlValues.Word(e!.Value));
    }

    private static void SetHeartRates(TomlEditor editor, Rider rider, RiderFileEdit edit)
    {
        Set(editor, "heart_rate", "rest_bpm", edit.RestHeartRateBpm, rider.RestHeartRateBpm, TomlValues.Number);
        Set(editor, "heart_rate", "max_bpm", edit.MaxHeartRateBpm, rider.MaxHeartRateBpm, TomlValues.Number);
    }

    private static void SetPlan(TomlEditor editor, Rider rider, RiderFileEdit edit)
    {
        Set(editor, "plan", "week_starts_on", edit.WeekStartsOn, rider.Plan.WeekStartsOn, d => TomlValues.Word(d!.Value));
        Set(editor, "plan", "weekly_hours", edit.WeeklyHours, rider.Plan.WeeklyHours, TomlValues.Number);
        if (edit.Days is not { } days || days.Order().SequenceEqual(rider.Plan.Days))
            return;
        if (days.IsEmpty)
            editor.TakeOut("plan", "days");
        else
            editor.Set("plan", "days", $"[{string.Join(", ", days.Distinct().Order().Select(TomlValues.Word))}]");
    }

    // What the file says is asked of the read rider: a default that is answered with itself is no change either.
    private static void Set<T>(TomlEditor editor, string table, string key, RiderFileEdit.Answer<T> answer, T? there, Func<T, string> write)
    {
        if (!answer.Given)
            return;
        if (answer.Value is null)
            editor.TakeOut(table, key);
        else if (!EqualityComparer<T>.Default.Equals(answer.Value, there))
            editor.Set(table, key, write(answer.Value));
    }
}
