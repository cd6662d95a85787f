using RideAudit.Document;
using RideAudit.Formatting;

namespace RideAudit.Review;

/// <summary>Says the two splits side by side and why they differ.</summary>
internal static class SplitWords
{
    private const int FewestRidesOfAStructure = 3;

    public static string Of(WeekEntry week)
    {
        var sessions = week.SplitBySession is { } session ? $"by session {Shown.Share(session.Easy)} easy, {Shown.Share(session.Hard)} hard" : null;
        if (week.SplitByTime is not { } time)
            return sessions is null ? "No ride of this week has a band, so there is no intensity split." : $"No ride of this week has a band, so there is no split by time; {sessions}.";
        var byTime = $"By time {Shown.Share(time.Low)} low, {Shown.Share(time.Middle)} middle, {Shown.Share(time.High)} high";
        var structure = week.Structure switch
        {
            _ when week.RideCount < FewestRidesOfAStructure => "",
            null => "",
            WeekStructure.AllLow => " All of the time was low.",
            { } word when week.PolarizationIndex is { } index => $" In structure the week is {Words.Of(word)} (polarization index {Shown.Number(index, 2)}, Treff et al. 2019), which is no verdict.",
            { } word => $" In structure the week is {Words.Of(word)}, which is no verdict.",
        };
        return $"{byTime}; {sessions ?? "no session has a kind"}: one counts minutes, the other what a ride was for (Sylta, Tønnessen and Seiler 2014).{structure}";
    }
}
