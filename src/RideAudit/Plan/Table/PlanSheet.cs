using System.Collections.Immutable;

namespace RideAudit.Plan.Table;

/// <summary>One plan table: its rows, what is wrong with them, and how the file is written, so that it can be written again in the same way.</summary>
public sealed record PlanSheet
{
    /// <summary>The file's name, for messages.</summary>
    public required string Name { get; init; }

    /// <summary>The header row as it stands.</summary>
    public required ImmutableArray<string> Header { get; init; }

    /// <summary>Which cell holds which column; columns that are not there are missing.</summary>
    public required ImmutableSortedDictionary<PlanColumn, int> Columns { get; init; }

    /// <summary>The rows in the order of the file.</summary>
    public required ImmutableArray<PlanRow> Rows { get; init; }

    /// <summary>Every mistake, in the order of the file.</summary>
    public ImmutableArray<PlanMistake> Mistakes { get; init; } = [];

    /// <summary>The separator: comma, semicolon or tab.</summary>
    public char Separator { get; init; } = ',';

    /// <summary>Lines end in carriage return and line feed, as RFC 4180 asks; else in a line feed.</summary>
    public bool CarriageReturns { get; init; } = true;

    /// <summary>The text begins with a byte-order mark.</summary>
    public bool ByteOrderMark { get; init; }

    /// <summary>A table without rows, as this program writes a new one.</summary>
    /// <param name="name">The file's name, for messages.</param>
    public static PlanSheet New(string name) => new()
    {
        Name = name,
        Header = [.. Enum.GetValues<PlanColumn>().Select(PlanHeader.NameOf)],
        Columns = Enum.GetValues<PlanColumn>().ToImmutableSortedDictionary(c => c, c => (int)c),
        Rows = [],
    };

    internal PlanMistake MistakeAt(PlanRow row, PlanColumn column, string found, string allowed) =>
        new(Name, row.Line, Columns.TryGetValue(column, out var at) ? Header[at].Trim() : PlanHeader.NameOf(column), at + 1, found, allowed);
}
