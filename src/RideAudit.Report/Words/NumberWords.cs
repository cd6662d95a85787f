using System.Collections.Frozen;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>A number of a finding in words, with its unit.</summary>
internal static class NumberWords
{
    // How each number of the rules reads; # is the number with its unit.
    private static readonly FrozenDictionary<string, (string Unit, string Phrase)> Phrases = new Dictionary<string, (string, string)>
    {
        ["ramp_points"] = ("points", "ramp #"),
        ["chronic_load_before_points"] = ("points", "chronic load # before"),
        ["chronic_load_after_points"] = ("points", "# after"),
        ["above_low_share"] = ("share", "# above low"),
        ["above_low_min"] = ("min", "# above low"),
        ["low_hours"] = ("h", "# low"),
        ["asked_low_hours"] = ("h", "# asked"),
        ["least_low_hours"] = ("h", "# would do"),
        ["added_hours"] = ("h", "# added"),
        ["added_above_low_hours"] = ("h", "# of it above low"),
        ["above_low_share_of_added"] = ("share", "# of the added time"),
        ["high_days"] = ("day", "# high"),
        ["threshold_days"] = ("day", "# threshold"),
        ["hard_days"] = ("hard day", "#"),
        ["hours_between"] = ("h", "# between"),
        ["low_share"] = ("share", "# low"),
        ["easy_session_share"] = ("share", "# of sessions easy"),
        ["intended_share"] = ("share", "# intended"),
        ["lightest_week_hours"] = ("h", "lightest week #"),
        ["share_of_the_others"] = ("share", "# of the others"),
        ["weeks"] = ("week", "# looked at"),
        ["longest_ride_h"] = ("h", "longest ride #"),
        ["ride_h"] = ("h", "ride #"),
        ["longest_before_h"] = ("h", "longest before #"),
        ["jump_ratio"] = ("times", "# times as long"),
        ["monotony"] = ("times", "monotony #"),
        ["strain_points"] = ("points", "strain #"),
        ["pair_stress_points"] = ("points", "# in the two days"),
        ["usual_week_stress_points"] = ("points", "usual week #"),
        ["share_of_usual_week"] = ("share", "# of it"),
        ["rest_or_recovery_days"] = ("day", "# of rest or recovery"),
        ["threshold_shown_w"] = ("W", "# shown"),
        ["threshold_in_force_w"] = ("W", "# in force"),
        ["hours"] = ("h", "# ridden"),
        ["mean_hours_before"] = ("h", "mean before #"),
        ["growth_ratio"] = ("times", "# times the mean"),
        ["planned_hours"] = ("h", "# planned"),
        ["share_of_plan"] = ("share", "# of plan"),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary><c>22.4 h between</c>, <c>73 % low</c>; a number that no phrase is kept for reads as its name and its value.</summary>
    public static string Of(NamedNumber number)
    {
        string name = number.Name.Replace('_', ' ');
        if (!Phrases.TryGetValue(number.Name, out (string Unit, string Phrase) known))
            return number.Value is { } plain ? $"{name} {Say.Plain(plain)}" : $"{name} {Say.Missing}";
        return number.Value is { } value ? known.Phrase.Replace("#", Quantity(value, known.Unit), StringComparison.Ordinal) : $"{name} {Say.Missing}";
    }

    /// <summary>Whether a phrase is kept for a name.</summary>
    public static bool Knows(string name) => Phrases.ContainsKey(name);

    private static string Quantity(double value, string unit) => unit switch
    {
        "share" => Say.Share(value),
        "times" => Say.Plain(value),
        "day" or "week" or "hard day" => Say.Count((int)value, unit),
        _ => Say.Plain(value) + Say.Joint + unit,
    };
}
