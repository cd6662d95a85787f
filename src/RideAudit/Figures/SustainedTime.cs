namespace RideAudit.Figures;

/// <summary>Time above a share of threshold power on the trailing 30 s mean.</summary>
/// <param name="SharePercent">The share, % of threshold power.</param>
/// <param name="SustainedSeconds">Seconds in runs: runs at most 15 s apart joined with the dip counted, runs under 60 s dropped.</param>
/// <param name="AllSeconds">All seconds at or above the share, runs or not.</param>
/// <param name="Runs">The runs, as half-open ranges of grid seconds.</param>
public sealed record SustainedTime(double SharePercent, double SustainedSeconds, double AllSeconds, IReadOnlyList<(int Start, int End)> Runs);
