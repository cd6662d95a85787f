namespace RideAudit.Rules;

/// <summary>Which measured things a rule rests on: they are only as good as the threshold power behind them.</summary>
[Flags]
internal enum Basis
{
    /// <summary>Hours and lengths: no threshold is behind them.</summary>
    Time = 0,

    /// <summary>Kinds of rides, or seconds in bands.</summary>
    Kinds = 1,

    /// <summary>Training stress.</summary>
    Stress = 2,
}
