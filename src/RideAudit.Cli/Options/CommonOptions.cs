using System.CommandLine;

namespace RideAudit.Cli.Options;

/// <summary>Options that several commands share.</summary>
internal static class CommonOptions
{
    /// <summary>The rider file.</summary>
    public static Option<string?> Rider() => new("--rider")
    {
        Description = "Rider file. Without it: rider.toml in FOLDER; without that: defaults, and a notice.",
        HelpName = "FILE",
    };

    /// <summary>The date looked back from.</summary>
    public static Option<NodaTime.LocalDate?> AsOf() =>
        DateOption.Create("--as-of", "Look back from this date; rides on or after it are left out. Default: today in the rider's time zone.");

    /// <summary>How rows are written.</summary>
    public static Option<TableFormat> Format() => ChoiceOption.Create(
        "--format",
        "A table to read, CSV (RFC 4180) or JSON. Default: table.",
        ("table", TableFormat.Table),
        ("csv", TableFormat.Csv),
        ("json", TableFormat.Json));

    /// <summary>Whether unusable files matter to the exit code.</summary>
    public static Option<bool> Strict() => new("--strict") { Description = "Exit with 4 when some files could not be used." };

    // Not a bool: the parser would take no word but true and false for one.
    /// <summary>What makes the program fail.</summary>
    public static Option<string?> FailOn() => ChoiceOption.Create<string?>("--fail-on", "Exit with 1 when a rule is broken.", ("broken", "broken"));

    /// <summary>Whether to say nothing.</summary>
    public static Option<bool> Quiet() => new("--quiet", "-q") { Description = "Print nothing but errors." };
}
