using System.Diagnostics;

namespace RideAudit.Units;

/// <summary>The program's work by name, for whoever asks what it costs. Nobody listening, naming a phase costs nothing.</summary>
internal static class Phase
{
    private static readonly ActivitySource Source = new("RideAudit");

    /// <summary>Begins a phase that ends when it is disposed of; phases of one thread do not lie inside each other.</summary>
    /// <param name="name">What it is called.</param>
    public static Activity? Begin(string name) => Source.StartActivity(name);
}
