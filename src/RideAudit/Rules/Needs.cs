namespace RideAudit.Rules;

/// <summary>What a rule needs of a week before it can be judged at all.</summary>
[Flags]
internal enum Needs
{
    None = 0,
    Rides = 1,
    Tier = 2,
    FinishedWeek = 4,
    NoEvent = 8,
    NoAway = 16,
    NoLighter = 32,
    NotJustBack = 64,
    NotIll = 128,
}
