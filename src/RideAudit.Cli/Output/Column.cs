using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Output;

/// <summary>One column of a table for reading.</summary>
/// <typeparam name="T">What a row is made from.</typeparam>
/// <param name="Header">Its heading.</param>
/// <param name="Cell">Its cell in a row.</param>
internal sealed record Column<T>(string Header, Func<T, Piece> Cell)
{
    /// <summary>Set to the right, as numbers are.</summary>
    public bool Right { get; init; }

    /// <summary>0 always stays; the highest goes first when the terminal is narrow.</summary>
    public int Priority { get; init; }

    /// <summary>Takes what width is left and is shortened in the middle where that is too little.</summary>
    public bool Elastic { get; init; }
}
