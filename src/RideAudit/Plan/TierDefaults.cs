namespace RideAudit.Plan;

/// <summary>The limits that differ by tier and experience.</summary>
/// <remarks>Common practice, no source; the shares of easy sessions follow Seiler 2010, Int J Sports Physiol Perform 5:276.</remarks>
internal static class TierDefaults
{
    public static Limits For(Tier tier, Experience experience) => tier switch
    {
        Tier.Low => new Limits
        {
            HighDaysAtMost = experience switch { Experience.New => 1, Experience.Racing => 3, _ => 2 },
            LongRideHours = experience == Experience.New ? 1.5 : 2,
            RestDaysAtLeast = 3,
            IntendedLowShare = 0.70,
            SplitTolerance = 0.07,
        },
        Tier.Middle => new Limits
        {
            HighDaysAtMost = experience == Experience.New ? 1 : 2,
            LongRideHours = 2.5,
            RestDaysAtLeast = 2,
            IntendedLowShare = 0.75,
            SplitTolerance = 0.07,
        },
        Tier.High => new Limits
        {
            HighDaysAtMost = 2,
            LongRideHours = 3,
            RestDaysAtLeast = 1,
            IntendedLowShare = 0.80,
            SplitTolerance = 0.05,
            IntendedEasySessionShare = 0.75,
        },
        _ => new Limits
        {
            HighDaysAtMost = 2,
            LongRideHours = 4,
            RestDaysAtLeast = 1,
            IntendedLowShare = 0.90,
            SplitTolerance = 0.05,
            IntendedEasySessionShare = 0.80,
        },
    };
}
