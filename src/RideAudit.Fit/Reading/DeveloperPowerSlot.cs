using RideAudit.Fit.Protocol;

namespace RideAudit.Fit.Reading;

/// <summary>Where a record's developer field with power is, and how it is read.</summary>
internal sealed record DeveloperPowerSlot(int Offset, FitBaseType Type, double Scale, double Subtract);
