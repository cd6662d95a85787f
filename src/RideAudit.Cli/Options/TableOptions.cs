using System.CommandLine;
using System.CommandLine.Parsing;
using NodaTime;

namespace RideAudit.Cli.Options;

/// <summary>The options of <c>rides</c> and <c>weeks</c>, and how they are read back.</summary>
internal sealed class TableOptions
{
    private readonly Argument<string> _folder = FolderArgument.Create();
    private readonly Option<string?> _rider = CommonOptions.Rider();
    private readonly Option<LocalDate?> _asOf = CommonOptions.AsOf();
    private readonly Option<LocalDate?> _since = DateOption.Create("--since", "From this date on.");
    private readonly Option<LocalDate?> _until = DateOption.Create("--until", "Up to and including this date.");
    private readonly Option<TableFormat> _format = CommonOptions.Format();
    private readonly Option<bool> _strict = CommonOptions.Strict();

    /// <summary>Adds everything to a command.</summary>
    public void AddTo(Command command)
    {
        command.Arguments.Add(_folder);
        foreach (var option in new Option[] { _rider, _since, _until, _format, _asOf, _strict })
            command.Options.Add(option);
        command.Validators.Add(result =>
        {
            if (result.GetValue(_since) > result.GetValue(_until))
                result.AddError("--since is after --until.");
        });
    }

    /// <summary>Rows are wanted as JSON.</summary>
    public bool IsJson(CommandResult result) => result.GetValue(_format) == TableFormat.Json;

    /// <summary>What was asked for.</summary>
    public TableArguments Read(ParseResult parsed) => new(
        parsed.GetRequiredValue(_folder),
        parsed.GetValue(_rider),
        parsed.GetValue(_asOf),
        parsed.GetValue(_since),
        parsed.GetValue(_until),
        parsed.GetValue(_format),
        parsed.GetValue(_strict));
}
