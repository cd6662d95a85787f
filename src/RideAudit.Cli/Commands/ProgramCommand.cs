using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RideAudit.Report;

namespace RideAudit.Cli.Commands;

/// <summary>A command with examples. What it is asked for an argument or an option is the command's own from then on.</summary>
/// <param name="description">What it does.</param>
/// <param name="examples">Command lines that show what it is for, each with a few words of explanation.</param>
internal sealed class ProgramCommand(string name, string description, params IReadOnlyList<(string Line, string Meaning)> examples) : Command(name, description)
{
    private const string RideFiles = "Folder of ride files (.fit, .tcx, .gpx, .csv, also as .gz or in a .zip), read at any depth.";

    private const int MostWeeks = 16;

    /// <summary>Command lines that show what it is for, each with a few words of explanation.</summary>
    public IReadOnlyList<(string Line, string Meaning)> Examples { get; } = examples;

    /// <summary>Any argument.</summary>
    public Argument<T> Takes<T>(Argument<T> argument)
    {
        Arguments.Add(argument);
        return argument;
    }

    /// <summary>Any option.</summary>
    public Option<T> Takes<T>(Option<T> option)
    {
        Options.Add(option);
        return option;
    }

    /// <summary>The folder of ride files.</summary>
    /// <param name="text">What the folder holds.</param>
    public Argument<string> Folder(string text = RideFiles) => Takes(new Argument<string>("FOLDER") { Description = text });

    /// <summary>One or more folders of ride files.</summary>
    public Argument<string[]> Folders() =>
        Takes(new Argument<string[]>("FOLDER") { Description = RideFiles + " Several give a review each.", Arity = ArgumentArity.OneOrMore, CustomParser = Words });

    /// <summary>Exactly one folder, for a command that shares what it does with one that takes several.</summary>
    public Argument<string[]> OneFolder() => Takes(new Argument<string[]>("FOLDER") { Description = RideFiles, Arity = ArgumentArity.ExactlyOne, CustomParser = Words });

    /// <summary>The rider file.</summary>
    public Option<string?> Rider() => File("--rider", "Rider file. Without it: rider.toml in FOLDER; without that: defaults, and a notice.");

    /// <summary>The date looked back from.</summary>
    public Option<LocalDate?> AsOf() =>
        Date("--as-of", "Look back from this date; rides on or after it are left out. Default: today in the rider's time zone.");

    /// <summary>The paper of what is drawn.</summary>
    /// <param name="text">What it does.</param>
    public Option<Paper> Paper(string text) => Choice("--paper", text, ("a4", Report.Paper.A4), ("letter", Report.Paper.Letter));

    /// <summary>How rows are written.</summary>
    public Option<TableFormat> Format() => Choice(
        "--format", "A table to read, CSV (RFC 4180) or JSON. Default: table.", ("table", TableFormat.Table), ("csv", TableFormat.Csv), ("json", TableFormat.Json));

    /// <summary>Whether what could not be used matters to the exit code.</summary>
    /// <param name="what">What could not be used.</param>
    public Option<bool> Strict(string what = "files") => Flag("--strict", $"Exit with 4 when some {what} could not be used.");

    // Not a bool: the parser would take no word but true and false for one.
    /// <summary>What makes the program fail; null: nothing does.</summary>
    public Option<string?> FailOn() => Choice<string?>("--fail-on", "Exit with 1 when a rule is broken.", ("broken", "broken"));

    /// <summary>How many weeks; null: not given.</summary>
    /// <param name="text">What it does.</param>
    public Option<int?> Weeks(string text) => Read<int?>("--weeks", "N", text, typed =>
        int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var weeks) && weeks is >= 1 and <= MostWeeks
            ? (weeks, null)
            : (null, $"--weeks takes a whole number from 1 to {MostWeeks}; found '{typed}'."));

    /// <summary>Whether to say nothing.</summary>
    public Option<bool> Quiet() => Takes(new Option<bool>("--quiet", "-q") { Description = "Print nothing but errors." });

    /// <summary>An option that is given or not.</summary>
    public Option<bool> Flag(string option, string text) => Takes(new Option<bool>(option) { Description = text });

    /// <summary>A switch for who works on the program: no help names it.</summary>
    public Option<bool> HiddenFlag(string option, string text) => Takes(new Option<bool>(option) { Description = text, Hidden = true });

    /// <summary>An option that names a file or another thing.</summary>
    public Option<string?> File(string option, string text, string called = "FILE") => Takes(new Option<string?>(option) { Description = text, HelpName = called });

    /// <summary>An option that takes a date such as 2026-05-11.</summary>
    public Option<LocalDate?> Date(string option, string text) => Read<LocalDate?>(option, "DATE", text, typed =>
        LocalDatePattern.Iso.Parse(typed) is { Success: true } date
            ? (date.Value, null)
            : (null, $"{option} takes a date written year-month-day, such as 2026-05-11; found '{typed}'."));

    /// <summary>An option that takes one of a few words; not given, it is its type's default.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    public Option<T> Choice<T>(string option, string text, params (string Word, T Value)[] choices)
    {
        var words = choices.Select(c => c.Word).ToArray();
        var made = Read<T>(option, string.Join('|', words), text, typed =>
        {
            foreach (var choice in choices)
                if (string.Equals(choice.Word, typed, StringComparison.OrdinalIgnoreCase))
                    return (choice.Value, null);
            return (default!, $"{option} takes {Listed(words)}; found '{typed}'.");
        });
        made.CompletionSources.Add(words);
        return made;
    }

    /// <summary>An option whose word is read by a function of its own.</summary>
    /// <typeparam name="T">What the word is read as.</typeparam>
    /// <param name="option">Its name.</param>
    /// <param name="called">What stands for its word in the help.</param>
    /// <param name="text">What it does.</param>
    /// <param name="read">A value, or what is wrong.</param>
    public Option<T> Read<T>(string option, string called, string text, Func<string, (T Value, string? Wrong)> read) => Takes(new Option<T>(option)
    {
        Description = text,
        HelpName = called,
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result =>
        {
            var (value, wrong) = read(result.Tokens[^1].Value);
            if (wrong is not null)
                result.AddError(wrong);
            return value;
        },
    });

    /// <summary>Refuses options that do not go together.</summary>
    /// <param name="wrong">They were given so.</param>
    /// <param name="sentence">What is wrong, and what to do.</param>
    public void Refuses(Func<CommandResult, bool> wrong, string sentence) => Validators.Add(result =>
    {
        if (wrong(result))
            result.AddError(sentence);
    });

    /// <summary>What it does when it is run.</summary>
    public void Does(Func<ParseResult, ExitCode> action) => SetAction(asked => (int)action(asked));

    // The library reads several words only where several may stand.
    private static string[] Words(ArgumentResult result) => [.. result.Tokens.Select(t => t.Value)];

    private static string Listed(string[] words) =>
        words.Length == 1 ? $"'{words[0]}'" : string.Join(", ", words[..^1].Select(w => $"'{w}'")) + $" or '{words[^1]}'";
}
