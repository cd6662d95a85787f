using System.Globalization;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Units;

namespace RideAudit.Figures;

/// <summary>Gives a ride its kind where samples could not, and gives the rider and the coach the last word.</summary>
internal static class LastWord
{
    /// <summary>The figures with the kind that counts.</summary>
    /// <param name="figures">Figures with what power or heart rate said.</param>
    /// <param name="ride">The ride, for its rating and the word on it.</param>
    /// <param name="limits">The limits in force.</param>
    public static RideFigures On(RideFigures figures, Ride ride, Limits limits)
    {
        var longEnough = KindOfRide.IsLongEnough(figures.DurationSeconds, figures.Bands, limits);
        if (figures is { MeasuredBy: MeasureSource.None, Rating: { } rating })
            figures = WithKind(figures, KindOfRide.FromRating(rating, figures.DurationSeconds, limits), KindSource.Rating);
        if (ride.GivenKind is { } given)
            figures = WithKind(figures, given, KindSource.Word);
        // Without samples a long ride is as easy as the rating or the word that made it one.
        var toldLong = figures is { Kind: RideKind.Long, KindFrom: KindSource.Rating or KindSource.Word };
        return figures with
        {
            LongEnough = longEnough || toldLong,
            Remarks = Contradiction(figures, limits) is { } remark ? figures.Remarks.Add(remark) : figures.Remarks,
        };
    }

    private static RideFigures WithKind(RideFigures figures, RideKind kind, KindSource from) =>
        figures with { Kind = kind, KindFrom = kind is RideKind.None or RideKind.Unrated ? KindSource.None : from };

    /// <remarks>A long ride may well be rated hard for its length alone.</remarks>
    private static string? Contradiction(RideFigures figures, Limits limits)
    {
        if (figures.Rating is not { } rating || figures.KindFrom == KindSource.Rating)
            return null;
        var rated = $"Rated {rating.ToString("0.#", CultureInfo.InvariantCulture)} of 10";
        return figures.Kind switch
        {
            RideKind.Recovery when rating >= limits.RatingHigh => $"{rated}, which is hard for a recovery ride.",
            RideKind.Endurance when rating >= limits.RatingHigh => $"{rated}, which is hard for an endurance ride.",
            RideKind.High when rating <= limits.RatingEasy => $"{rated}, which is easy for a high ride.",
            _ => null,
        };
    }
}
