namespace RideAudit.Report.Pages;

/// <summary>How closely page one is set.</summary>
/// <param name="Compact">Less white between and inside its parts.</param>
/// <param name="TitleLines">Lines that a thing to change may take.</param>
/// <param name="HeldLines">Lines for what held.</param>
/// <param name="ShallowestChart">Least height of the spacing line, pt.</param>
internal readonly record struct Density(bool Compact, int TitleLines, int HeldLines, float ShallowestChart)
{
    /// <summary>From roomy to close: the first at which everything fits is taken.</summary>
    public static readonly Density[] RoomyFirst =
    [
        new(false, 3, 4, 185), new(true, 3, 4, 165), new(true, 3, 3, 145), new(true, 3, 2, 130), new(true, 2, 1, 118),
    ];
}
