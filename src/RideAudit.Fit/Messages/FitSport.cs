namespace RideAudit.Fit.Messages;

/// <summary>The sport a device was set to (message 12). Its free-text name is not read.</summary>
/// <param name="Sport">Sport; 2 is cycling, 21 e-biking; null if absent.</param>
/// <param name="SubSport">Kind of the sport; null if absent.</param>
public sealed record FitSport(byte? Sport, byte? SubSport);
