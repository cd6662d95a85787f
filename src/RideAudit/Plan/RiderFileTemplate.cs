using System.Globalization;
using System.Text;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan;

/// <summary>Writes a commented rider file that reads back as what was answered.</summary>
public static class RiderFileTemplate
{
    /// <summary>The text of a new rider file, lines ending in a line feed.</summary>
    /// <param name="answers">What it is to say.</param>
    public static string Write(RiderFileAnswers answers)
    {
        var text = new StringBuilder();
        WriteRider(text, answers);
        WriteThreshold(text, answers);
        WriteHeartRate(text, answers);
        WritePlan(text, answers);
        WriteRest(text);
        return text.ToString();
    }

    private static void WriteRider(StringBuilder text, RiderFileAnswers answers)
    {
        Line(text, "# The rider that a review is for. Lines that begin with # are not read.");
        Line(text, "");
        Line(text, $"label = {Quoted(string.IsNullOrWhiteSpace(answers.Label) ? "Rider" : answers.Label)}", "printed on the review; no other personal detail is needed");
        Key(text, "time_zone", answers.TimeZone is { } zone ? Quoted(zone) : null, Quoted("Europe/Lisbon"), "an IANA time zone; without it, the machine’s");
        Line(text, $"sex = {Quoted(Lower(answers.Sex))}", "female, male or unset; only used for heart-rate load");
        Key(text, "mass_kg", answers.MassKg, "68.0", "body mass");
        Line(text, $"experience = {Quoted(Lower(answers.Experience))}", "new (under six months of regular riding), regular or racing");
    }

    private static void WriteThreshold(StringBuilder text, RiderFileAnswers answers)
    {
        var known = answers.ThresholdPowerW is not null || answers.ThresholdHeartRateBpm is not null;
        var mark = known ? "" : "# ";
        Line(text, "");
        Line(text, "# Thresholds by date, earliest first: the latest on or before a ride’s date counts. Add a block after each test.");
        Line(text, $"{mark}[[threshold]]");
        Line(text, $"{mark}from = {answers.ThresholdFrom.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}", "edit: the day you had it from; earlier rides are measured against it too");
        Key(text, "power_w", answers.ThresholdPowerW, "250", "threshold power (FTP): about what an all-out hour would hold");
        Key(text, "heart_rate_bpm", answers.ThresholdHeartRateBpm, "168", "threshold heart rate");
    }

    private static void WriteHeartRate(StringBuilder text, RiderFileAnswers answers)
    {
        Line(text, "");
        Line(text, "# Used for the load of rides without power.");
        Line(text, "[heart_rate]");
        Key(text, "rest_bpm", answers.RestHeartRateBpm, "48", "on waking");
        Key(text, "max_bpm", answers.MaxHeartRateBpm, "188", "the highest seen, not a formula");
    }

    private static void WritePlan(StringBuilder text, RiderFileAnswers answers)
    {
        var days = answers.Days.IsEmpty ? null : $"[{string.Join(", ", answers.Days.Select(d => Quoted(Lower(d))))}]";
        Line(text, "");
        Line(text, "[plan]");
        Line(text, $"week_starts_on = {Quoted(Lower(answers.WeekStartsOn))}");
        Key(text, "weekly_hours", answers.WeeklyHours, "6.5", "planned hours; without them, the mean of the weeks before");
        Line(text, "# low_share = 0.75", "intended share of easy time; without it, the usual one at these hours");
        Line(text, "# split_by = \"time\"", "judge the intensity split by time or by session");
        Line(text, "# band_cuts_percent = [76, 106]", "low, middle and high band, % of threshold power");
        Line(text, "# starts = 2026-03-02", "with weeks: shows which week of the plan it is");
        Line(text, "# weeks = 16");
        Key(text, "days", days, "[\"tuesday\", \"thursday\", \"saturday\", \"sunday\"]", "days that can be ridden on; without them, any");
    }

    private static void WriteRest(StringBuilder text)
    {
        Line(text, "");
        Line(text, "# Any limit of the rules by name; the rules command lists them.");
        Line(text, "# [plan.limits]");
        Line(text, "# long_ride_h = 2.5");
        Line(text, "");
        Line(text, "# Days that the plan does not hold for: lighter, event (a race, a stage event, a camp), away or ill.");
        Line(text, "# [[exception]]");
        Line(text, "# from = 2026-05-18");
        Line(text, "# to = 2026-05-24");
        Line(text, "# kind = \"lighter\"");
        Line(text, "");
        Line(text, "# Planned hours by date; before the first of them, weekly_hours above. Raising them here rejudges no past week.");
        Line(text, "# [[hours]]");
        Line(text, "# from = 2026-05-04");
        Line(text, "# weekly = 7.5");
        Line(text, "");
        Line(text, "# Minutes free by day; with this table, a day not named has none.");
        Line(text, "# [days]");
        Line(text, "# tuesday = 60");
        Line(text, "# saturday = 210");
        Line(text, "");
        Line(text, "# Rides that stand every week, whatever is laid out around them.");
        Line(text, "# [[fixed]]");
        Line(text, "# day = \"saturday\"");
        Line(text, "# kind = \"threshold\"", "recovery, endurance, long, threshold or high");
        Line(text, "# minutes = 120");
        Line(text, "# session = \"club ride\"");
        Line(text, "");
        Line(text, "# Sessions of your own; docs/plan.md says how blocks are written.");
        Line(text, "# [[session]]");
        Line(text, "# session = \"four by four\"");
        Line(text, "# kind = \"high\"");
        Line(text, "# minutes = 60");
        Line(text, "# blocks = \"15 min easy, 4 x 4 min 108-112 %, 3 min easy between, easy to the end\"");
        Line(text, "");
        Line(text, "# A rule that is not to be applied for a while; the rules command lists them.");
        Line(text, "# [[set_aside]]");
        Line(text, "# rule = \"rest-days\"");
        Line(text, "# until = 2026-06-30");
        Line(text, "# why = \"short commutes count as rest\"");
        Line(text, "");
        Line(text, "# Columns of CSV files whose headers are not understood, by channel:");
        Line(text, $"# {string.Join(", ", RiderFileReader.CsvChannels)}.");
        Line(text, "# [csv]");
        Line(text, "# power = \"Leistung\"");
    }

    private static void Key(StringBuilder text, string key, double? value, string example, string comment) =>
        Key(text, key, value?.ToString("0.####", CultureInfo.InvariantCulture), example, comment);

    private static void Key(StringBuilder text, string key, string? value, string example, string comment) =>
        Line(text, value is null ? $"# {key} = {example}" : $"{key} = {value}", comment);

    private static void Line(StringBuilder text, string line, string? comment = null)
    {
        text.Append(comment is null ? line : line.PadRight(32));
        if (comment is not null)
            text.Append("  # ").Append(comment);
        text.Append('\n');
    }

    private static string Lower<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();

    private static string Quoted(string value) => TomlValues.Text(value);
}
