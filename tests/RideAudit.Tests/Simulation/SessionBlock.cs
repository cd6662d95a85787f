namespace RideAudit.Tests.Simulation;

/// <summary>A stretch of a session that the rider means to ride evenly.</summary>
/// <param name="Seconds">Its length, s.</param>
/// <param name="Percent">Its mean power, coasting included, % of threshold power.</param>
internal readonly record struct SessionBlock(int Seconds, double Percent)
{
    private const double LeastWorkPercent = 84;

    /// <summary>An interval: the rider pedals through and holds the power.</summary>
    public bool IsWork => Percent >= LeastWorkPercent;
}
