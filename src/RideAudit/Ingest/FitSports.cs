using RideAudit.Rides;

namespace RideAudit.Ingest;

/// <summary>FIT sport numbers; enum values of the protocol's profile.</summary>
internal static class FitSports
{
    private const byte Cycling = 2;
    private const byte EBiking = 21;

    /// <param name="sport">The sport's number; null if the file has none.</param>
    /// <param name="subSport">Its kind.</param>
    /// <param name="nothingSaysSo">Neither session nor sport message: a crashed recording, taken as a ride.</param>
    public static RideSport Of(byte? sport, byte? subSport, bool nothingSaysSo) => sport switch
    {
        EBiking => RideSport.EBike,
        Cycling => subSport switch
        {
            6 => RideSport.Indoor,
            7 => RideSport.Road,
            8 => RideSport.Mountain,
            28 => RideSport.EBike,
            46 => RideSport.Gravel,
            47 => RideSport.EBike,
            58 => RideSport.Virtual,
            _ => RideSport.Cycling,
        },
        null when nothingSaysSo => RideSport.Cycling,
        _ => RideSport.Other,
    };
}
