using System.Globalization;
using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Review;

/// <summary>Says the two splits side by side and why they differ.</summary>
internal static class SplitWords
{
    private const int FewestRidesOfAStructure = 3;

    public static string Of(WeekEntry week)
    {
        if (week.SplitByTime is not { } time)
            return "No ride of this week has a band, so there is no intensity split.";
        var byTime = string.Create(CultureInfo.InvariantCulture, $"By time {Percent(time.Low)} low, {Percent(time.Middle)} middle, {Percent(time.High)} high");
        var bySession = week.SplitBySession is { } session ? $"; by session {Percent(session.Easy)} easy, {Percent(session.Hard)} hard" : "; no session has a kind";
        var structure = week.Structure switch
        {
            _ when week.RideCount < FewestRidesOfAStructure => "",
            null => "",
            "all low" => " All of the time was low.",
            var word when week.PolarizationIndex is { } index => string.Create(CultureInfo.InvariantCulture, $" In structure the week is {word} (polarization index {index:0.00}, Treff et al. 2019), which is no verdict."),
            var word => $" In structure the week is {word}, which is no verdict.",
        };
        return $"{byTime}{bySession}: one counts minutes, the other what a ride was for (Sylta, Tønnessen and Seiler 2014).{structure}";
    }

    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{(share * 100).To(0):0} %");
}
