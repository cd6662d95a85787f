using NodaTime;

namespace RideAudit.Cli.Options;

/// <summary>What <c>rides</c> or <c>weeks</c> was asked for.</summary>
/// <param name="Folder">The folder as typed.</param>
/// <param name="Rider">The rider file as typed; null: the folder's own.</param>
/// <param name="AsOf">The date looked back from; null: today.</param>
/// <param name="Since">First date wanted; null: from the first ride on.</param>
/// <param name="Until">Last date wanted; null: to the last ride.</param>
/// <param name="Format">How rows are written.</param>
/// <param name="Strict">Unusable files matter to the exit code.</param>
internal sealed record TableArguments(
    string Folder, string? Rider, LocalDate? AsOf, LocalDate? Since, LocalDate? Until, TableFormat Format, bool Strict)
{
    /// <summary>The whole power curve of each ride is wanted as well.</summary>
    public bool PowerCurve { get; init; }

    /// <summary>A date is within the dates wanted.</summary>
    public bool Wants(LocalDate date) => Wants(date, date);

    /// <summary>A span touches the dates wanted.</summary>
    public bool Wants(LocalDate from, LocalDate to) => !(to < Since) && !(from > Until);
}
