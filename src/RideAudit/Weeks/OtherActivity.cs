using NodaTime;

namespace RideAudit.Weeks;

/// <summary>An activity that is not cycling: hours only.</summary>
/// <param name="File">Its file, as rides name theirs.</param>
/// <param name="Date">Local date of its start.</param>
/// <param name="DurationSeconds">Timer time, s.</param>
internal sealed record OtherActivity(string File, LocalDate Date, double DurationSeconds);
