using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The spacing line of the card: fewer words, larger letters, the change drawn.</summary>
internal sealed class CardLine : Block
{
    private const float BlocksDepth = 180;
    private const float SpanDepth = 30;
    private const double QuietestDayHours = 2.75;
    private readonly ReviewDocument review;
    private readonly FontSet fonts;
    private readonly float dayWidth;
    private readonly float hourWidth;
    private readonly float unit;
    private readonly TextStyle regular;
    private readonly TextStyle strong;

    /// <param name="review">The review.</param>
    /// <param name="fonts">Fonts.</param>
    /// <param name="width">Width, pt.</param>
    /// <param name="size">Size of its text, pt.</param>
    public CardLine(ReviewDocument review, FontSet fonts, float width, float size)
    {
        (this.review, this.fonts) = (review, fonts);
        dayWidth = width / 7;
        double busiest = review.Week.Days.Max(day => Math.Max(day.Hours, PlannedBlocks.Of(day).Sum(session => session.Minutes ?? 0) / 60.0));
        hourWidth = (float)(dayWidth / Math.Max(QuietestDayHours, busiest));
        double tallest = review.Rides.Select(RideBlock.HeightShare).Concat(review.Week.Days.SelectMany(PlannedBlocks.Of).Select(session => session.IntensityRatio!.Value * session.IntensityRatio.Value)).Append(1).Max();
        unit = (float)(BlocksDepth / tallest);
        regular = new TextStyle(Weight.Regular, size, Palette.Quiet);
        strong = new TextStyle(Weight.SemiBold, size, Palette.Ink);
    }

    /// <inheritdoc/>
    public override float Height => SpanDepth + ChangeMarks.Depth + strong.Leading + BlocksDepth + (3 * strong.Leading) + 12;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        float baseline = y + SpanDepth + ChangeMarks.Depth + strong.Leading + BlocksDepth;
        surface.Line(x, baseline - unit, x + (7 * dayWidth), baseline - unit, Palette.Hairline, 1, 3);
        var places = new Dictionary<string, Area>(StringComparer.Ordinal);
        for (int day = 0; day < review.Week.Days.Length; day++)
            DrawDay(surface, review.Week.Days[day], x + (day * dayWidth), baseline, places);
        surface.Line(x, baseline, x + (7 * dayWidth), baseline, Palette.Ink, 1.2f);
        new ChangeMarks(review, places, hourWidth).Draw(surface, x, dayWidth);
        DrawSpans(surface, places, y);
        Bands.Legend(surface, x + (7 * dayWidth) - Bands.LegendWidth(fonts, regular), baseline + (3 * strong.Leading) + 7, regular);
        surface.Text("dashed: threshold power", regular, x, baseline + (3 * strong.Leading) + 7);
    }

    private void DrawDay(Surface surface, DayEntry day, float left, float baseline, Dictionary<string, Area> places)
    {
        float centre = left + (dayWidth / 2), top = baseline;
        new PlannedBlocks(hourWidth, unit).Draw(surface, day, centre, baseline);
        RideEntry[] rides = [.. review.Rides.Where(ride => day.Rides.Contains(ride.File))];
        float x = centre - (hourWidth * (float)(rides.Sum(ride => ride.DurationSeconds) / 3600) / 2);
        foreach (RideEntry ride in rides)
        {
            Area area = new RideBlock(ride, hourWidth, unit).Draw(surface, x, baseline);
            places[ride.File] = area;
            x = area.Right;
            top = Math.Min(top, area.Top);
        }

        if (rides.Length > 0)
        {
            string stress = Shown.Number(day.Stress);
            float half = (strong.Measure(fonts, stress) / 2) + 2;
            surface.Fill(new Area(centre - half, top - 4 - strong.Size, centre + half, top - 2), Palette.Paper);
            surface.Text(stress, strong, centre, top - 5, Align.Middle);
        }

        surface.Text(Shown.Weekday(day.Date)[..3], rides.Length > 0 ? strong : regular, centre, baseline + strong.Leading, Align.Middle);
        if (rides.Length > 0)
            surface.Text(Shown.TableLength(day.Hours * 3600), regular, centre, baseline + (2 * strong.Leading), Align.Middle);
    }

    // Only the spans that a rule finds wanting: the card says what went wrong.
    private void DrawSpans(Surface surface, Dictionary<string, Area> places, float y)
    {
        foreach (SpanEntry span in review.Week.Spans.Where(span => span.Verdict is Verdict.Broken or Verdict.Watch))
        {
            if (!places.TryGetValue(span.ToRide, out Area to))
                continue;
            bool before = !places.TryGetValue(span.FromRide, out Area from);
            float start = before ? to.Left - (dayWidth / 2) : from.Right, line = y + SpanDepth - 6;
            surface.Line(start, line, to.Left, line, Palette.Rust, 2.2f, before ? 3 : 0);
            foreach (float end in new[] { start, to.Left })
                surface.Line(end, line - 5, end, line + 5, Palette.Rust, 2.2f);
            surface.Text(Shown.Hours(span.Hours, 0), strong with { Colour = Palette.Rust }, (start + to.Left) / 2, line - 9, Align.Middle);
        }
    }
}
