using System.Collections.Immutable;
using NodaTime;
using RideAudit.Document.Layouts;
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
        var start = NextStart.Of(folder, rider, request, fromWeekBegun: true);
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
        private readonly Rider _rider;
        private readonly PlanTable _table;
        private readonly PlanInForce _plan;
        private readonly ImmutableArray<WeekFacts> _past;
        private readonly ImmutableArray<DayFacts> _ridden;
        private readonly PlanCalendar _calendar;
        private readonly RideStock _stock;
        private readonly LocalDate _startsOn;

        public PlannedWeek(Rider rider, PlanTable table, LocalDate startsOn, ImmutableArray<WeekFacts> past, ImmutableArray<DayFacts> ridden)
        {
            _rider = WithEvents(rider, table);
            (_table, _startsOn, _past, _ridden) = (table, startsOn, past, ridden);
            _plan = PlanOf(rider, table, past, startsOn);
            _calendar = new PlanCalendar(rider, table);
            _stock = new RideStock(rider, _plan.Limits, startsOn);
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
            var review = new WeekUnderReview(Facts, new Past(_past), _plan);
            var findings = RuleBook.Standard.Judge(review);
            var measures = SessionMeasures.Of(_rider, _startsOn);
            var exceptions = _calendar.Week(_startsOn);
            return new NextWeekEntry
            {
                StartsOn = _startsOn,
                IsoWeek = IsoWeek.StartingOn(_startsOn),
                From = _startsOn.PlusDays(_ridden.Length),
                Exception = exceptions.Leading,
                Hours = Facts.Hours,
                AskedHours = _plan.AskedHours,
                ExpectedStress = Facts.Stress,
                LongRideMinutes = exceptions is { Lighter: false, Away: false, Event: false } ? (int)Math.Round(_plan.Limits.LongRideHours * 60) : null,
                Days = [.. Enumerable.Range(0, 7).Select(i => Day(i, measures))],
                Verdicts = findings,
                SmallestChange = ChangeSearch.Find(review, findings),
            };
        }

        private static Rider WithEvents(Rider rider, PlanTable table) => new PlanCalendar(rider, table).RiderWithEvents;

        private WeekFacts Ridden()
        {
            ImmutableArray<DayFacts> days = [.. Enumerable.Range(0, 7).Select(DayOf)];
            var first = _past.IsEmpty ? days.FirstOrDefault(d => !d.Rides.IsEmpty)?.Date : _past[^1].FirstRideOn;
            return WeekFacts.Build(days, _past.IsEmpty ? default : _past[^1].LoadAfter, first, _calendar.Week(_startsOn).Leading);
        }

        private DayFacts DayOf(int index)
        {
            var date = _startsOn.PlusDays(index);
            if (index < _ridden.Length)
                return _ridden[index];
            // Several sessions of a day are ridden one after another, hours apart.
            var rides = _table.On(date).Select(_stock.Of).OfType<StockRide>().Select((r, i) => r.On(date) with
            {
                File = NameOf(r, date, i),
                StartsAt = (date + new LocalTime(Math.Min(8 + 5 * i, 23), 0)).WithOffset(Offset.Zero),
            });
            return DayFacts.Build(date, _calendar.IsOut(date) ? [] : rides, 0, _plan.Limits);
        }

        private static string NameOf(StockRide ride, LocalDate date, int index) =>
            $"{Shown.Iso(date)} {ride.Name ?? PlannedKinds.WordOf(ride.Kind)}{(index > 0 ? $" {index + 1}" : "")}";

        private NextDayEntry Day(int index, SessionMeasures measures) => new()
        {
            Date = _startsOn.PlusDays(index),
            Kind = Facts.Days[index].Kind,
            Exception = _calendar.KindOn(_startsOn.PlusDays(index)),
            RiddenMinutes = index < _ridden.Length ? (int)Math.Round(_ridden[index].RideSeconds / 60) : 0,
            RiddenStress = index < _ridden.Length ? _ridden[index].Stress : 0,
            Sessions = index < _ridden.Length ? [] : [.. _table.On(_startsOn.PlusDays(index)).Where(r => !r.IsRest).Select(r => NextWriter.Row(r, _stock.Of(r), measures))],
        };
    }
}
