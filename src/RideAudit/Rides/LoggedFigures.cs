namespace RideAudit.Rides;

/// <summary>What a ride log row says of a ride that has no recording.</summary>
/// <param name="MeanPowerW">Average power, W; null when not given.</param>
/// <param name="NormalisedPowerW">Normalised power, W; null when not given.</param>
/// <param name="MeanHeartRateBpm">Average heart rate, bpm; null when not given.</param>
public sealed record LoggedFigures(double? MeanPowerW, double? NormalisedPowerW, double? MeanHeartRateBpm);
