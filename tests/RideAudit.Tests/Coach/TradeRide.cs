using RideAudit.Tests.Simulation;

namespace RideAudit.Tests.Coach;

/// <summary>A ride of a drawn week.</summary>
/// <param name="Day">Days after the week's first.</param>
/// <param name="Hour">Its hour of start.</param>
/// <param name="Session">What is ridden.</param>
internal readonly record struct TradeRide(int Day, int Hour, Session Session);
