using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Fridge;

/// <summary>One session to ride, or a day without one: a box to tick, the day, the kind, the length, and what to ride.</summary>
internal sealed class SessionRow : Block
{
    private const float Day = 17;
    private const float Kind = 72;
    private const float Minutes = 192;
    private const float What = 206;
    private readonly NextDayEntry _day;
    private readonly NextSessionEntry? _session;
    private readonly FridgeDensity _density;
    private readonly float _width;
    private readonly bool _isFirst;
    private readonly List<TextLine> _what;

    /// <param name="day">The day.</param>
    /// <param name="index">Which of its sessions, 0 first; nothing else than 0 for a day without one.</param>
    /// <param name="density">Sizes.</param>
    /// <param name="fonts">Fonts.</param>
    /// <param name="width">Width, pt.</param>
    public SessionRow(NextDayEntry day, int index, FridgeDensity density, FontSet fonts, float width)
    {
        (_day, _density, _width, _isFirst) = (day, density, width, index == 0);
        _session = index < day.Sessions.Length ? day.Sessions[index] : null;
        _what = _session is null || ToComeWords.Told(_session) is not { Length: > 0 } told ? [] : LineBreaker.Break(fonts, [new Span(told, density.Text)], width - What);
    }

    /// <inheritdoc/>
    public override float Height => (2 * _density.Air) + Math.Max(_density.Strong.Leading + (Range is null ? 0 : Styles.Small.Leading), _what.Sum(l => l.Leading));

    private string? Range => _session is null ? null : ToComeWords.Range(_session);

    private bool IsOff => _session is null && _day.Exception != ExceptionKind.Event;

    private bool IsHard => _session is { } session && PlannedKinds.IsHard(session.Kind);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        if (_isFirst)
            surface.Hairline(x, x + _width, y);
        var baseline = y + _density.Air + _density.Strong.Ascent;
        if (_session is not null)
            surface.Frame(new Area(x + 0.5f, baseline - _density.Box, x + 0.5f + _density.Box, baseline), Palette.Quiet, 0.8f);
        else if (_day.RiddenMinutes > 0)
            VerdictMark.Draw(surface, Rules.Verdict.Kept, x, baseline, _density.Strong.Size);
        var quiet = _density.Text with { Colour = Palette.Quiet };
        if (_isFirst)
            surface.Text(Shown.ShortDay(_day.Date), IsOff ? quiet : _density.Strong, x + Day, baseline);
        surface.Text(_session is { } session ? Formatting.Words.Of(session.Kind) : ToComeWords.Day(_day), IsOff ? quiet : IsHard ? _density.Strong : _density.Text, x + Kind, baseline);
        var minutes = _session?.Minutes ?? _day.RiddenMinutes;
        if (minutes > 0)
            surface.Text(Shown.TableLength(minutes * 60), _session is null ? quiet : _density.Strong, x + Minutes, baseline, Align.End);
        if (Range is { } range)
            surface.Text(range, Styles.Small, x + Minutes, baseline + Styles.Small.Leading, Align.End);
        else if (_session is null && _day.RiddenMinutes > 0)
            surface.Text("Ridden.", quiet, x + What, baseline);
        DrawWhat(surface, x + What, y + _density.Air + _density.Strong.Ascent - _density.Text.Ascent);
    }

    private void DrawWhat(Surface surface, float x, float y)
    {
        foreach (var line in _what)
        {
            line.Draw(surface, x, y + line.Ascent);
            y += line.Leading;
        }
    }
}
