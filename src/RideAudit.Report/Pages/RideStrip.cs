using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Figures;
using RideAudit.Formatting;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Units;

namespace RideAudit.Report.Pages;

/// <summary>One ride: its trace over the bands, heart rate beneath, best efforts and remarks.</summary>
internal sealed class RideStrip : Block
{
    private const float Air = 6;
    private const float HeartShare = 0.5f;
    private const float AxisDepth = 15;
    private readonly RideEntry _ride;
    private readonly int _index;
    private readonly float _width;
    private readonly float _traceDepth;
    private readonly TextLine _title;
    private readonly TextLine _file;
    private readonly List<TextLine> _facts;
    private readonly TraceChart? _chart;

    public RideStrip(RideEntry ride, RideTrace? trace, int index, ImmutableArray<double> cuts, StripScale scale, FontSet fonts, float width, float depth, HeldEntry? held)
    {
        _ride = ride;
        _index = index;
        _width = width;
        _title = TextLine.Of(fonts, [new Span(Title(ride), Styles.Strong), new Span(Measures(ride), Styles.Body)]);
        _file = TextLine.Fit(fonts, ride.File, Styles.Tiny, Math.Max(60, width - _title.Width - 14));
        Span[] said = [.. Facts(ride, held)];
        _facts = said.Length == 0 ? [] : LineBreaker.Break(fonts, said, width);
        _traceDepth = trace is { Power30W.IsEmpty: true } ? depth * HeartShare : depth;
        _chart = trace is not null && TraceChart.HasSomething(trace) ? new TraceChart(ride, trace, cuts, scale, width, _traceDepth, held) : null;
    }

    /// <inheritdoc/>
    public override Tag? Tag => _chart is null ? Drawing.Tag.Paragraph : Drawing.Tag.Figure;

    /// <inheritdoc/>
    public override string? Alternative => _chart is null ? null : string.Join(' ', [_title.Text, .. _facts.Select(line => line.Text)]);

    /// <inheritdoc/>
    public override float Height => Air + _title.Leading + 2 + (_chart is null ? 0 : _traceDepth + AxisDepth) + _facts.Sum(line => line.Leading);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Anchor(x, y, Places.Ride(_index));
        surface.Hairline(x, x + _width, y);
        y += Air;
        _title.Draw(surface, x, y + _title.Ascent);
        _file.Draw(surface, x + _width - _file.Width, y + _title.Ascent);
        y += _title.Leading + 2;
        if (_chart is not null)
        {
            _chart.Draw(surface, x, y);
            y += _traceDepth + AxisDepth;
        }

        foreach (var line in _facts)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }

    private static string Title(RideEntry ride) =>
        $"{Shown.DayAndDate(ride.StartsAt.Date)} {Shown.Time(ride.StartsAt.TimeOfDay)}, {(ride.Kind == RideKind.None ? "short ride" : Formatting.Words.Of(ride.Kind))}";

    private static string Measures(RideEntry ride)
    {
        var text = $"  {Shown.Length(ride.DurationSeconds)}";
        if (ride.DistanceKm is { } distance)
            text += $" · {Shown.Distance(distance)}";
        if (ride.Stress is { } stress)
            text += $" · {Shown.Points(stress)}" + (ride.StressFrom is StressSource.Power or StressSource.Unknown ? "" : $" from {Formatting.Words.Of(ride.StressFrom)}");
        return text;
    }

    private static IEnumerable<Span> Facts(RideEntry ride, HeldEntry? held)
    {
        var parts = new List<string>();
        if (held?.RepeatsSentence is { } planned)
            parts.Add(planned);
        else if (ride.Repeats is { IsDefaultOrEmpty: false } repeats)
            parts.Add($"Repeats at or above {Shown.Percent(repeats[0].SharePercent)}: {string.Join(", ", repeats.Select(Repeat))}.");
        if (DataWords.Bouts(ride) is { } bouts)
            parts.Add(bouts);
        if (ride.Rating is { } rating)
            parts.Add($"Rated {Shown.Number(rating, rating == Math.Round(rating) ? 0 : 1)} of 10.");
        if (!ride.Parts.IsEmpty)
            parts.Add($"Joined from {string.Join(", ", ride.Parts)}.");
        parts.AddRange(ride.Remarks);
        if (parts.Count > 0)
            yield return new Span(string.Join(' ', parts), Styles.Tiny with { Colour = Palette.Ink });
    }

    private static string Repeat(StretchEntry stretch, int place) =>
        $"{Shown.Number(place + 1)}){Shown.Joint}{Shown.Length(stretch.EndSecond - stretch.StartSecond)} {Shown.Watts(stretch.MeanPowerW)}";
}
