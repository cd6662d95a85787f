namespace RideAudit.Cli.Terminal;

/// <summary>Asks on standard error, so that standard output stays free for results.</summary>
internal sealed class Questions
{
    private readonly Shell _shell;

    private Questions(Shell shell) => _shell = shell;

    /// <summary>Says what is to come, where somebody is there to answer.</summary>
    /// <param name="shell">The world.</param>
    /// <param name="silent">Ask nothing, even on a terminal.</param>
    /// <returns>Null where nothing is to be asked.</returns>
    public static Questions? Begin(Shell shell, bool silent)
    {
        if (silent || !shell.Interactive)
            return null;
        shell.Error.Write("Five questions; an empty answer leaves a line to fill in later.\n");
        return new Questions(shell);
    }

    /// <summary>Asks until the answer can be used.</summary>
    /// <typeparam name="T">What the answer is read as.</typeparam>
    /// <param name="question">The question, with what an empty answer means.</param>
    /// <param name="read">A value, or what is wrong.</param>
    /// <param name="empty">What an empty answer means.</param>
    public T Ask<T>(string question, Func<string, (T Value, string? Wrong)> read, T empty)
    {
        while (true)
        {
            _shell.Error.Write(question + ": ");
            _shell.Error.Flush();
            var line = ReadLine();
            if (string.IsNullOrWhiteSpace(line))
                return empty;
            var (value, wrong) = read(line.Trim());
            if (wrong is null)
                return value;
            _shell.Error.Write($"  {wrong}\n");
        }
    }

    // Reading a line cannot be interrupted, so it is left behind when Ctrl-C comes first.
    private string? ReadLine()
    {
        var line = Task.Run(_shell.In.ReadLine, CancellationToken.None);
        line.Wait(_shell.Cancel);
        return line.Result;
    }
}
