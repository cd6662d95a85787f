using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Tests.Rules;
using RideAudit.Units;

namespace RideAudit.Tests.Review;

/// <summary>Reviews of random weeks: days, kinds, lengths, exceptions, free minutes and histories drawn by a seed.</summary>
internal static class RandomReviews
{
    private static readonly LocalDate Monday = Sample.Monday;
    private static readonly FolderContent NoFiles = new() { FilesSeen = 0, Recordings = [], Notices = [], TimeZone = "UTC" };
    private static readonly RideKind[] Kinds =
        [RideKind.High, RideKind.High, RideKind.Threshold, RideKind.Endurance, RideKind.Endurance, RideKind.Endurance, RideKind.Recovery, RideKind.Long];

    /// <summary>A review, and the week that it is of.</summary>
    public static (ReviewDocument Document, WeekUnderReview Week) Draw(int seed)
    {
        var random = new Random(seed);
        var plan = Plan(random);
        var rides = new List<RideFigures>();
        var usual = Enumerable.Range(0, random.Next(2, 7)).Select(_ => (Day: random.Next(7), Kind: Kinds[random.Next(Kinds.Length)], Hour: Hour(random))).DistinctBy(r => (r.Day, r.Hour)).ToArray();
        for (var back = random.Next(11); back > 0; back--)
        {
            foreach (var (day, kind, hour) in usual)
                Add(rides, Ride(random, plan, Monday.PlusDays(day - 7 * back), kind, hour));
        }
        var alike = random.Next(3) == 0;
        if (alike)
        {
            foreach (var (day, kind, hour) in usual)
                Add(rides, Ride(random, plan, Monday.PlusDays(day), kind, hour));
        }
        for (var count = alike ? random.Next(2) : random.Next(8); count > 0; count--)
        {
            var kind = random.Next(30) == 0 ? RideKind.Unrated : Kinds[random.Next(Kinds.Length)];
            Add(rides, Ride(random, plan, Monday.PlusDays(random.Next(7)), kind, Hour(random)));
        }
        var week = Sample.Review(rides, plan, daysThatCount: random.Next(10) == 0 ? random.Next(1, 7) : 7);
        return (Of(week, rides, []), week);
    }

    /// <summary>The document of a week made of figures alone.</summary>
    /// <param name="week">The week.</param>
    /// <param name="rides">All rides, those of the weeks before included.</param>
    /// <param name="notices">What is to be said of files.</param>
    public static ReviewDocument Of(WeekUnderReview week, IEnumerable<RideFigures> rides, FileNotice[] notices)
    {
        var book = new Workbook
        {
            AsOf = week.Week.StartsOn.PlusDays(week.Week.DaysThatCount),
            AsOfFromLastRide = false,
            Rides = [],
            Figures = [.. rides],
            Weeks = [.. week.Past.Weeks, week.Week],
            Plan = week.Plan,
            Calendar = new PlanCalendar(week.Plan.Rider, PlanTable.Empty),
        };
        return ReviewBuilder.Review(NoFiles with { Notices = [.. notices] }, book, new ReviewRequest { Today = book.AsOf, AsOf = book.AsOf });
    }

    private static PlanInForce Plan(Random random)
    {
        var exceptions = new List<PlanException>();
        for (var count = random.Next(2) == 0 ? 0 : random.Next(1, 3); count > 0; count--)
        {
            var from = Monday.PlusDays(random.Next(-16, 7));
            exceptions.Add(new PlanException(from, from.PlusDays(random.Next(9)), (ExceptionKind)random.Next(4)));
        }
        var plan = Sample.Plan(random.Next(3, 17), (Experience)random.Next(3), new TrainingPlan { SplitBy = (SplitBy)random.Next(2) }, [.. exceptions.OrderBy(e => e.From)]);
        if (random.Next(3) > 0)
            return plan;
        var free = Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None && random.Next(4) > 0).ToImmutableSortedDictionary(d => d, _ => 45 + 15 * random.Next(14));
        return plan with { Rider = plan.Rider with { MinutesFree = free } };
    }

    private static RideFigures Ride(Random random, PlanInForce plan, LocalDate date, RideKind kind, int hour)
    {
        var minutes = kind switch
        {
            RideKind.Long => plan.Limits.LongRideHours * 60 + random.Next(61),
            RideKind.Recovery => 20 + random.Next(56),
            _ => 30 + random.Next(121),
        };
        double? low = kind is RideKind.High or RideKind.Threshold ? 0.4 + 0.45 * random.NextDouble() : null;
        var ride = Sample.Ride(date, kind, Math.Round(minutes), hour, 0, low);
        // Now and then an easy ride that was not ridden easy.
        return kind == RideKind.Endurance && random.Next(12) == 0 ? ride with { IntensityRatio = 0.77 + 0.08 * random.NextDouble() } : ride;
    }

    private static int Hour(Random random) => 7 + 5 * random.Next(3);

    private static void Add(List<RideFigures> rides, RideFigures ride)
    {
        if (!rides.Exists(r => r.File == ride.File))
            rides.Add(ride);
    }
}
