using NodaTime;
using RideAudit.Report;

namespace RideAudit.Cli.Options;

/// <summary>What <c>roster</c> was asked for.</summary>
/// <param name="Folder">The folder as typed.</param>
/// <param name="Out">The folder to write into, as typed; null: named after the date.</param>
/// <param name="AsOf">The date looked back from; null: today.</param>
/// <param name="Week">Any day of the week to review; null: the last finished one.</param>
/// <param name="Paper">The paper.</param>
/// <param name="Strict">Unusable files and riders matter to the exit code.</param>
/// <param name="FailOnBroken">Broken rules matter to the exit code.</param>
/// <param name="Quiet">Print nothing but errors.</param>
internal sealed record RosterArguments(
    string Folder, string? Out, LocalDate? AsOf, LocalDate? Week, Paper Paper, bool Strict, bool FailOnBroken, bool Quiet);
