namespace RideAudit.Figures;

/// <summary>Time above a share of threshold power on the trailing 30 s mean.</summary>
/// <param name="SharePercent">The share, % of threshold power.</param>
/// <param name="SustainedSeconds">Seconds in runs: runs at most 15 s apart joined with the dip counted, runs under 60 s dropped.</param>
/// <param name="Runs">The runs, as half-open ranges of grid seconds.</param>
public sealed record SustainedTime(double SharePercent, double SustainedSeconds, IReadOnlyList<(int Start, int End)> Runs);
