namespace RideAudit.Report.Pages;

/// <summary>How closely page one is set.</summary>
/// <param name="Compact">Less white between and inside its parts.</param>
/// <param name="DetailLines">Lines that a thing to change may take under its title; the rest stands with its rule.</param>
/// <param name="ShallowestChart">Least height of the spacing line, pt.</param>
internal readonly record struct Density(bool Compact, int DetailLines, float ShallowestChart)
{
    /// <summary>From roomy to close: the first at which everything fits is taken.</summary>
    public static readonly Density[] RoomyFirst =
    [
        new(false, 3, 185), new(true, 3, 165), new(true, 2, 145), new(true, 1, 130), new(true, 0, 118),
    ];
}
