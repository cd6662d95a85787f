namespace RideAudit.Cli.Tests.Docs;

/// <summary>One command line of a page, with what the page shows beneath it.</summary>
/// <param name="Page">The page, relative to the repository.</param>
/// <param name="Line">The line's number in the page, 0 first.</param>
/// <param name="Command">The command.</param>
/// <param name="Shown">The output the page shows, line by line.</param>
/// <param name="IsTranscript">What the program prints is held to what the page shows.</param>
internal sealed record DocBlock(string Page, int Line, string Command, IReadOnlyList<string> Shown, bool IsTranscript)
{
    public override string ToString() => $"{Page}:{Line + 1} {Command}";
}
