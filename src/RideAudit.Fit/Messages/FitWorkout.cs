namespace RideAudit.Fit.Messages;

/// <summary>What a workout file holds (message 26).</summary>
/// <param name="Name">Its name; empty if absent.</param>
/// <param name="Sport">Sport; 2 is cycling; null if absent.</param>
/// <param name="Steps">Number of steps that follow; null if absent.</param>
public sealed record FitWorkout(string Name, byte? Sport, ushort? Steps);
