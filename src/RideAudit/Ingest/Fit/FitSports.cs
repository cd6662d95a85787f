using RideAudit.Rides;

namespace RideAudit.Ingest.Fit;

/// <summary>Sport numbers.</summary>
/// <remarks>Source: the protocol's profile, types "sport" and "sub_sport".</remarks>
internal static class FitSports
{
    /// <summary>The number of an activity that the device does not name.</summary>
    public const byte Generic = 0;

    private const byte Cycling = 2;
    private const byte EBiking = 21;

    /// <param name="sport">The sport's number; null if the file has none: a crashed recording in a folder of rides is taken as a ride.</param>
    /// <param name="subSport">Its kind; null if the file has none.</param>
    public static RideSport Of(byte? sport, byte? subSport) => sport switch
    {
        null => RideSport.Cycling,
        EBiking => RideSport.EBike,
        Cycling => subSport switch
        {
            5 or 6 => RideSport.Indoor,
            7 => RideSport.Road,
            8 or 9 => RideSport.Mountain,
            28 or 47 => RideSport.EBike,
            46 => RideSport.Gravel,
            58 => RideSport.Virtual,
            _ => RideSport.Cycling,
        },
        _ => RideSport.Other,
    };
}
