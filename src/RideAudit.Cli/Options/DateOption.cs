using System.CommandLine;
using System.CommandLine.Parsing;
using NodaTime;
using NodaTime.Text;

namespace RideAudit.Cli.Options;

/// <summary>An option that takes a date such as 2026-05-11.</summary>
internal static class DateOption
{
    /// <summary>A new option.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it does.</param>
    public static Option<LocalDate?> Create(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "DATE",
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result => Parse(result, name),
    };

    private static LocalDate? Parse(ArgumentResult result, string name)
    {
        var text = result.Tokens[^1].Value;
        var parsed = LocalDatePattern.Iso.Parse(text);
        if (parsed.Success)
            return parsed.Value;
        result.AddError($"{name} takes a date written year-month-day, such as 2026-05-11; found '{text}'.");
        return null;
    }
}
