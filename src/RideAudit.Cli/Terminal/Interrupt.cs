using System.Runtime.InteropServices;

namespace RideAudit.Cli.Terminal;

/// <summary>Turns Ctrl-C and a polite kill into a token. The first asks; the second ends the program at once.</summary>
internal sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration _interrupt;
    private readonly PosixSignalRegistration _terminate;

    /// <summary>Starts to listen.</summary>
    public Interrupt()
    {
        _interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, OnSignal);
        _terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, OnSignal);
    }

    /// <summary>Signalled once somebody asks to stop.</summary>
    public CancellationToken Token => _source.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        _interrupt.Dispose();
        _terminate.Dispose();
        _source.Dispose();
    }

    private void OnSignal(PosixSignalContext context)
    {
        context.Cancel = !_source.IsCancellationRequested;
        _source.Cancel();
    }
}
