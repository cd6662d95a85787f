using System.Text;
using Spectre.Console;

namespace RideAudit.Cli.Terminal;

/// <summary>A writer of known width: nothing is asked of the terminal behind it.</summary>
internal sealed class FixedOutput(TextWriter writer, int width) : IAnsiConsoleOutput
{
    /// <inheritdoc/>
    public TextWriter Writer => writer;

    /// <inheritdoc/>
    public bool IsTerminal => false;

    /// <inheritdoc/>
    public int Width => width;

    /// <inheritdoc/>
    public int Height => 24;

    /// <inheritdoc/>
    public void SetEncoding(Encoding encoding)
    {
    }
}
