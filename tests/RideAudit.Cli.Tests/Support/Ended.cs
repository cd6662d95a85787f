namespace RideAudit.Cli.Tests.Support;

/// <summary>How a run of the program ended.</summary>
internal sealed record Ended(int Code, string Out, string Error);
