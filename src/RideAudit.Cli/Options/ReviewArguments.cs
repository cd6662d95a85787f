using NodaTime;
using RideAudit.Report;

namespace RideAudit.Cli.Options;

/// <summary>What <c>review</c> was asked for.</summary>
internal sealed record ReviewArguments
{
    /// <summary>The folder as typed.</summary>
    public required string Folder { get; init; }

    /// <summary>The rider file as typed; null: the folder's own.</summary>
    public string? Rider { get; init; }

    /// <summary>The date looked back from; null: today.</summary>
    public LocalDate? AsOf { get; init; }

    /// <summary>Any day of the week to review; null: the last finished one.</summary>
    public LocalDate? Week { get; init; }

    /// <summary>The PDF as typed; null: named after the week.</summary>
    public string? Pdf { get; init; }

    /// <summary>No PDF at all.</summary>
    public bool NoPdf { get; init; }

    /// <summary>The JSON as typed, <c>-</c> for standard output; null: none.</summary>
    public string? Json { get; init; }

    /// <summary>The picture of page one as typed; null: none.</summary>
    public string? Png { get; init; }

    /// <summary>The whole review as text instead of the summary.</summary>
    public bool Text { get; init; }

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; }

    /// <summary>The coach's note, as text or as a file; null: the folder's own.</summary>
    public string? Note { get; init; }

    /// <summary>Ruled space where a note would stand.</summary>
    public bool RoomForNotes { get; init; }

    /// <summary>Unusable files matter to the exit code.</summary>
    public bool Strict { get; init; }

    /// <summary>Broken rules matter to the exit code.</summary>
    public bool FailOnBroken { get; init; }

    /// <summary>Print nothing but errors.</summary>
    public bool Quiet { get; init; }

    /// <summary>How the pages are laid out.</summary>
    public PageOptions PageOptions => new() { Paper = Paper, RoomForNotes = RoomForNotes };

    /// <summary>The JSON takes standard output, and nothing else goes there.</summary>
    public bool JsonToOutput => Json == "-";
}
