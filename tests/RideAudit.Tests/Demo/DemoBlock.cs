namespace RideAudit.Tests.Demo;

/// <summary>A stretch of a demo ride.</summary>
/// <param name="Seconds">Length, s.</param>
/// <param name="Share">Intended power as a share of threshold power.</param>
internal readonly record struct DemoBlock(int Seconds, double Share);
