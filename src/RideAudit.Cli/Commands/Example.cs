namespace RideAudit.Cli.Commands;

/// <summary>A command line shown in the help.</summary>
/// <param name="Line">The line, without the prompt.</param>
/// <param name="Meaning">What it does, in a few words.</param>
internal sealed record Example(string Line, string Meaning);
