using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Work;

/// <summary>Asks on standard error, so that standard output stays free for results.</summary>
internal sealed class Questions(Shell shell)
{
    /// <summary>Asks until the answer can be used.</summary>
    /// <typeparam name="T">What the answer is read as.</typeparam>
    /// <param name="question">The question, with what an empty answer means.</param>
    /// <param name="read">A value, or what is wrong.</param>
    /// <param name="empty">What an empty answer means.</param>
    public T Ask<T>(string question, Func<string, (T Value, string? Wrong)> read, T empty)
    {
        while (true)
        {
            shell.Error.Write(question + ": ");
            shell.Error.Flush();
            var line = ReadLine();
            if (string.IsNullOrWhiteSpace(line))
                return empty;
            var (value, wrong) = read(line.Trim());
            if (wrong is null)
                return value;
            shell.Error.Write($"  {wrong}\n");
        }
    }

    // Reading a line cannot be interrupted, so it is left behind when Ctrl-C comes first.
    private string? ReadLine()
    {
        var line = Task.Run(shell.In.ReadLine, CancellationToken.None);
        line.Wait(shell.Cancel);
        return line.Result;
    }
}
