using NodaTime;

namespace RideAudit.Cli.Options;

/// <summary>What <c>next</c> was asked for.</summary>
/// <param name="Folder">The folder as typed.</param>
/// <param name="Rider">The rider file as typed; null: the folder's own.</param>
/// <param name="AsOf">The date looked back from; null: today.</param>
/// <param name="Week">Any day of the week before the one to lay out; null: the last finished one.</param>
/// <param name="Ics">The calendar file as typed; null: none.</param>
/// <param name="Format">How the layout is written.</param>
internal sealed record NextArguments(string Folder, string? Rider, LocalDate? AsOf, LocalDate? Week, string? Ics, TableFormat Format);
