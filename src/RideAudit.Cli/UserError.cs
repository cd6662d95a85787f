namespace RideAudit.Cli;

/// <summary>Something the person at the keyboard can put right: shown without a stack trace.</summary>
/// <param name="message">Where, what, and what to do.</param>
/// <param name="code">The exit code it ends with.</param>
internal sealed class UserError(string message, ExitCode code = ExitCode.WrongUse) : Exception(message)
{
    /// <summary>The exit code it ends with.</summary>
    public ExitCode Code { get; } = code;
}
