using NodaTime;
using RideAudit.Document.Layouts;

namespace RideAudit.Cli.Output;

/// <summary>One session to come of one rider of a roster.</summary>
/// <param name="Folder">The rider's folder under the roster's.</param>
/// <param name="Label">The rider.</param>
/// <param name="Date">Its day.</param>
internal readonly record struct RosterSession(string Folder, string Label, LocalDate Date, NextSessionEntry Session);
