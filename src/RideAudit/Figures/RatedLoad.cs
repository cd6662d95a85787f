namespace RideAudit.Figures;

/// <summary>Load from a session rating, scaled so that one hour at 7 is 100 points: an estimate.</summary>
/// <remarks>Rating (0 to 10) × minutes: Foster et al. 2001, J Strength Cond Res 15:109–115. The scale (7 for an hour at threshold) is from memory.</remarks>
internal static class RatedLoad
{
    private const double RatingOfAnHourAtThreshold = 7;

    /// <summary>The scaled load, points.</summary>
    /// <param name="rating">Session rating, 0 to 10.</param>
    public static double Of(double rating, double minutes) => rating * minutes / (RatingOfAnHourAtThreshold * 60) * 100;
}
