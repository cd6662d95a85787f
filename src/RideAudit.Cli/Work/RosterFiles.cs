namespace RideAudit.Cli.Work;

/// <summary>Names of the files that <c>roster</c> writes.</summary>
internal static class RosterFiles
{
    /// <summary>The overview as JSON; a folder that holds one is an earlier roster's output, not a rider.</summary>
    public const string Json = "overview.json";

    /// <summary>The overview as PDF.</summary>
    public const string Pdf = "overview.pdf";

    /// <summary>The overview as CSV.</summary>
    public const string Csv = "overview.csv";
}
