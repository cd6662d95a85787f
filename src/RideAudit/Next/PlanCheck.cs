using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Ingest;
using RideAudit.Plan;
using RideAudit.Plan.Table;
using RideAudit.Review;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Sessions;
using RideAudit.Weeks;

namespace RideAudit.Next;

/// <summary>Judges the weeks of a plan table before they are ridden, by the rules that judge ridden weeks, each after the one before.</summary>
public static class PlanCheck
{
    /// <summary>Judges planned weeks. Pure: the same input gives the same verdicts.</summary>
    /// <remarks>What of a week begun is ridden counts as ridden, and its rows of those days as over. Weeks between two planned ones without rows count as planned empty.</remarks>
    /// <param name="folder">What the folder holds; it may hold no ride.</param>
    /// <param name="rider">The rider file.</param>
    /// <param name="request">From when it is looked.</param>
    /// <param name="table">The plan tables.</param>
    /// <param name="weeks">How many planned weeks at most; null: all.</param>
    /// <returns>One entry a planned week that is not over; without weeks, and with a note, when there is none.</returns>
    public static NextDocument Build(FolderContent folder, Rider rider, ReviewRequest request, PlanTable table, int? weeks = null)
    {
        var start = NextStart.Of(folder, rider, request);
        return Judge(start, rider, table, weeks ?? int.MaxValue);
    }

    /// <summary>Judges planned weeks from a known start.</summary>
    internal static NextDocument Judge(NextStart start, Rider rider, PlanTable table, int weeks)
    {
        var entries = ImmutableArray.CreateBuilder<NextWeekEntry>();
        var past = start.Past;
        var ridden = start.Ridden;
        var last = table.Sessions.IsEmpty ? (LocalDate?)null : table.Sessions[^1].Date;
        for (var startsOn = start.StartsOn; startsOn <= last && entries.Count < weeks; startsOn = startsOn.PlusDays(7))
        {
            var week = new PlannedWeek(start.Known(rider), table, startsOn, past, ridden);
            if (!table.Week(startsOn).IsEmpty)
                entries.Add(week.Entry());
            past = past.IsEmpty && week.Facts.RideCount == 0 ? past : past.Add(week.Facts);
            ridden = [];
        }
        return new NextDocument
        {
            Schema = NextDocument.Checked,
            AsOf = start.AsOf,
            Rider = NextWriter.Rider(PlannedWeek.PlanOf(rider, table, start.Past, start.StartsOn), start.Zone),
            Weeks = entries.ToImmutable(),
            Notes = entries.Count > 0 ? [] : ["No week of the plan table is still to be ridden."],
        };
    }

    /// <summary>One week of the table.</summary>
    private sealed class PlannedWeek
    {
        private readonly Rider rider;
        private readonly PlanTable table;
        private readonly PlanInForce plan;
        private readonly ImmutableArray<WeekFacts> past;
        private readonly ImmutableArray<DayFacts> ridden;
        private readonly PlanCalendar calendar;
        private readonly RideStock stock;
        private readonly LocalDate startsOn;

        public PlannedWeek(Rider rider, PlanTable table, LocalDate startsOn, ImmutableArray<WeekFacts> past, ImmutableArray<DayFacts> ridden)
        {
            this.rider = WithEvents(rider, table);
            (this.table, this.startsOn, this.past, this.ridden) = (table, startsOn, past, ridden);
            plan = PlanOf(rider, table, past, startsOn);
            calendar = new PlanCalendar(rider, table);
            stock = new RideStock(rider, plan.Limits, startsOn);
            Facts = Ridden();
        }

        public WeekFacts Facts { get; }

        public static PlanInForce PlanOf(Rider rider, PlanTable table, ImmutableArray<WeekFacts> past, LocalDate startsOn) => PlanInForce.For(
            WithEvents(rider, table),
            [.. past.Select((w, i) => new WeekHours(w.StartsOn, w.Hours, !WeekExceptions.For(rider.Exceptions, w.StartsOn).With(w.Exception).None, i == 0 ? w.FirstRideOn : null))],
            startsOn,
            table);

        public NextWeekEntry Entry()
        {
            var review = new WeekUnderReview(Facts, new Past(past), plan);
            var findings = RuleBook.Standard.Judge(review);
            var measures = SessionMeasures.Of(rider, startsOn);
            var exceptions = calendar.Week(startsOn);
            return new NextWeekEntry
            {
                StartsOn = startsOn,
                IsoWeek = IsoWeek.StartingOn(startsOn),
                From = startsOn.PlusDays(ridden.Length),
                Exception = exceptions.Leading,
                Hours = Facts.Hours,
                AskedHours = plan.AskedHours,
                ExpectedStress = Facts.Stress,
                LongRideMinutes = exceptions is { Lighter: false, Away: false, Event: false } ? (int)Math.Round(plan.Limits.LongRideHours * 60) : null,
                Days = [.. Enumerable.Range(0, 7).Select(i => Day(i, measures))],
                Verdicts = findings,
                SmallestChange = ChangeSearch.Find(review, findings),
            };
        }

        private static Rider WithEvents(Rider rider, PlanTable table) => rider with
        {
            Exceptions =
            [
                .. (rider.Exceptions.IsDefault ? [] : rider.Exceptions)
                    .Concat(table.Sessions.Where(s => s.Kind == PlannedKind.Event).Select(s => new PlanException(s.Date, s.Date, ExceptionKind.Event)))
                    .OrderBy(e => e.From),
            ],
        };

        private WeekFacts Ridden()
        {
            ImmutableArray<DayFacts> days = [.. Enumerable.Range(0, 7).Select(DayOf)];
            var first = past.IsEmpty ? days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date : past[^1].FirstRideOn;
            return WeekFacts.Build(days, past.IsEmpty ? default : past[^1].LoadAfter, first, calendar.Week(startsOn).Leading);
        }

        private DayFacts DayOf(int index)
        {
            var date = startsOn.PlusDays(index);
            if (index < ridden.Length)
                return ridden[index];
            // Several sessions of a day are ridden one after another, hours apart.
            var rides = table.On(date).Select(stock.Of).OfType<StockRide>().Select((r, i) => r.On(date) with
            {
                File = NameOf(r, date, i),
                StartsAt = (date + new LocalTime(Math.Min(8 + 5 * i, 23), 0)).WithOffset(Offset.Zero),
            });
            return DayFacts.Build(date, calendar.IsOut(date) ? [] : rides, 0, plan.Limits);
        }

        private static string NameOf(StockRide ride, LocalDate date, int index) =>
            $"{Shown.Iso(date)} {ride.Name ?? PlannedKinds.WordOf(ride.Kind)}{(index > 0 ? $" {index + 1}" : "")}";

        private NextDayEntry Day(int index, SessionMeasures measures) => new()
        {
            Date = startsOn.PlusDays(index),
            Kind = Facts.Days[index].Kind,
            Exception = calendar.KindOn(startsOn.PlusDays(index)),
            RiddenMinutes = index < ridden.Length ? (int)Math.Round(ridden[index].RideSeconds / 60) : 0,
            Sessions = index < ridden.Length ? [] : [.. table.On(startsOn.PlusDays(index)).Where(r => !r.IsRest).Select(r => NextWriter.Row(r, stock.Of(r), measures))],
        };
    }
}
