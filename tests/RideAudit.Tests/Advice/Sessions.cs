using NodaTime;
using RideAudit.Figures;
using RideAudit.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Advice;

/// <summary>The hard sessions of a week, and every choice of some of them.</summary>
internal static class Sessions
{
    /// <summary>Hard rides of one day, those less than three hours apart in one session.</summary>
    /// <param name="week">The week.</param>
    /// <param name="high">Only sessions with a high ride in them.</param>
    public static IReadOnlyList<RideFigures[]> Of(WeekUnderReview week, bool high)
    {
        var sessions = new List<List<RideFigures>>();
        foreach (var ride in week.Week.Rides.Where(r => r.IsHard))
        {
            var last = sessions.Count > 0 ? sessions[^1][^1] : null;
            if (last is not null && last.Date == ride.Date && ride.StartsAt.ToInstant() - last.EndsAt.ToInstant() < Duration.FromHours(3))
                sessions[^1].Add(ride);
            else
                sessions.Add([ride]);
        }
        return [.. sessions.Where(s => !high || s.Exists(r => r.Kind == RideKind.High)).Select(s => s.ToArray())];
    }

    /// <summary>The rides of every choice of some sessions.</summary>
    public static IEnumerable<RideFigures[]> Choose(WeekUnderReview week, int count, bool high) =>
        Subsets(Of(week, high), count).Select(c => c.SelectMany(s => s).ToArray());

    /// <summary>Every choice of so many of some things.</summary>
    public static IEnumerable<IReadOnlyList<T>> Subsets<T>(IReadOnlyList<T> things, int count)
    {
        if (count == 0)
            yield return [];
        for (var first = 0; count > 0 && first <= things.Count - count; first++)
        {
            foreach (var rest in Subsets([.. things.Skip(first + 1)], count - 1))
                yield return [things[first], .. rest];
        }
    }
}
