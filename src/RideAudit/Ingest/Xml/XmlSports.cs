using RideAudit.Rides;

namespace RideAudit.Ingest.Xml;

/// <summary>Reads the words that TCX and GPX files use for sports.</summary>
internal static class XmlSports
{
    private static readonly (string Part, RideSport Sport)[] Words =
    [
        ("ebik", RideSport.EBike), ("e-bik", RideSport.EBike), ("e_bik", RideSport.EBike), ("e bik", RideSport.EBike),
        ("virtual", RideSport.Virtual), ("indoor", RideSport.Indoor), ("gravel", RideSport.Gravel), ("mountain", RideSport.Mountain), ("mtb", RideSport.Mountain), ("road", RideSport.Road),
        ("cycl", RideSport.Cycling), ("bik", RideSport.Cycling), ("ride", RideSport.Cycling),
        ("run", RideSport.Other), ("walk", RideSport.Other), ("hik", RideSport.Other), ("swim", RideSport.Other), ("row", RideSport.Other), ("ski", RideSport.Other), ("other", RideSport.Other),
    ];

    /// <param name="word">As the file says it; null or unknown words are taken as cycling, for the file lies in a folder of rides.</param>
    public static RideSport Of(string? word)
    {
        if (word is null)
            return RideSport.Cycling;
        var isOtherSport = word.Contains("run", StringComparison.OrdinalIgnoreCase) || word.Contains("swim", StringComparison.OrdinalIgnoreCase);
        foreach (var (part, sport) in Words)
            if (word.Contains(part, StringComparison.OrdinalIgnoreCase))
                return isOtherSport ? RideSport.Other : sport;
        return RideSport.Cycling;
    }
}
