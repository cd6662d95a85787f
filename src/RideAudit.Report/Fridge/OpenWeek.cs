using System.Collections.Immutable;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;

namespace RideAudit.Report.Fridge;

/// <summary>A week to come on one baseline: each session an open block, its width time, its height intensity ratio squared, its area the training stress to expect.</summary>
/// <remarks>The review's own picture before anybody has ridden; hard sessions have the stronger outline. What is ridden already is filled. An event of unknown length has no block.</remarks>
internal sealed class OpenWeek : Block
{
    private const float DayGap = 2;
    private static readonly Pen Easy = new(Palette.Quiet, 0.8f);
    private static readonly Pen Hard = new(Palette.Ink, 1.5f);
    private readonly NextWeekEntry _week;
    private readonly WeekScale _scale;
    private readonly float _width;
    private readonly float _depth;
    private readonly bool _isSmall;

    /// <param name="week">The week.</param>
    /// <param name="scale">The scale that it shares with other weeks of the document.</param>
    /// <param name="width">Width of the seven days, pt.</param>
    /// <param name="depth">Height with captions, pt.</param>
    /// <param name="isSmall">One of several weeks on a page.</param>
    public OpenWeek(NextWeekEntry week, WeekScale scale, float width, float depth, bool isSmall)
    {
        (_week, _scale, _width, _depth, _isSmall) = (week, scale, width, depth, isSmall);
    }

    /// <inheritdoc/>
    public override float Height => _depth;

    private TextStyle Name => _isSmall ? Styles.Tiny with { Weight = Weight.SemiBold, Colour = Palette.Ink } : Styles.Strong;

    private TextStyle Plain => _isSmall ? Styles.Tiny : Styles.Quiet;

    private float Line => Name.Leading;

    private float DayWidth => _width / 7;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        var baseline = y + _depth - (3 * Line) - 3;
        var unit = (float)((baseline - y - (_isSmall ? 1 : Line)) / _scale.Tallest);
        var hour = DayWidth * (1 - (DayGap / DayWidth)) / (float)_scale.Hours;
        surface.Line(x, baseline - unit, x + _width, baseline - unit, Palette.Hairline, 0.8f, 2);
        for (var i = 0; i < _week.Days.Length; i++)
            DrawDay(surface, _week.Days[i], x + ((i + 0.5f) * DayWidth), baseline, hour, unit);
        surface.Line(x, baseline, x + _width, baseline, Palette.Ink, 0.8f);
    }

    private void DrawDay(Surface surface, NextDayEntry day, float centre, float baseline, float hour, float unit)
    {
        ImmutableArray<NextSessionEntry> drawn = [.. day.Sessions.Where(s => OpenScale.HeightOf(s) > 0)];
        var left = centre - (hour * drawn.Sum(s => s.Minutes) / 120);
        var top = baseline;
        if (OpenScale.RiddenHeightOf(day) is > 0 and var ridden)
            DrawRidden(surface, day, new Area(centre - (hour * day.RiddenMinutes / 120), baseline - (unit * (float)ridden), centre + (hour * day.RiddenMinutes / 120), baseline));
        foreach (var session in drawn)
        {
            var right = left + (hour * session.Minutes / 60);
            var height = baseline - (unit * (float)OpenScale.HeightOf(session));
            var pen = PlannedKinds.IsHard(session.Kind) ? Hard : Easy;
            surface.Line(left, baseline, left, height, pen);
            surface.Line(left, height, right, height, pen);
            surface.Line(right, height, right, baseline, pen);
            (left, top) = (right, Math.Min(top, height));
        }
        if (!_isSmall && drawn.Length > 0)
            surface.Text(Shown.Number(drawn.Sum(s => s.ExpectedStress ?? 0)), Plain, centre, top - 4, Align.Middle);
        DrawCaption(surface, day, centre, baseline + 3);
    }

    private void DrawRidden(Surface surface, NextDayEntry day, Area area)
    {
        surface.Fill(area, Palette.Hairline);
        if (!_isSmall)
            surface.Text(Shown.Number(day.RiddenStress), Plain, (area.Left + area.Right) / 2, area.Top - 4, Align.Middle);
    }

    private void DrawCaption(Surface surface, NextDayEntry day, float centre, float top)
    {
        var isRide = !day.Sessions.IsEmpty || day.Exception == ExceptionKind.Event;
        surface.Text(Shown.ShortDay(day.Date), isRide ? Name : Plain, centre, top + Name.Ascent, Align.Middle);
        surface.Text(ToComeWords.Day(day), Plain with { Colour = isRide ? Palette.Ink : Palette.Quiet }, centre, top + Line + Name.Ascent, Align.Middle);
        surface.Text(ToComeWords.Length(day), Plain, centre, top + (2 * Line) + Name.Ascent, Align.Middle);
    }
}
