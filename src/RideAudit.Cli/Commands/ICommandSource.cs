using System.CommandLine;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>One command of the program.</summary>
internal interface ICommandSource
{
    /// <summary>Command lines that show what the command is for, each with a word of explanation.</summary>
    IReadOnlyList<Example> Examples { get; }

    /// <summary>The command, ready to be parsed and run.</summary>
    /// <param name="shell">What it may know of the world.</param>
    Command Create(Shell shell);
}
