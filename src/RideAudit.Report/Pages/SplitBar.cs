using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The week's split by time and by session as two bars on one scale, with what was intended and its tolerance across them.</summary>
internal sealed class SplitBar : Block
{
    private const float TitleDepth = 22;
    private const float BarDepth = 13;
    private const float BarGap = 5;
    private const float NameRoom = 58;
    private const float Gap = 10;
    private const float Over = 4;
    private readonly WeekEntry _week;
    private readonly float _width;
    private readonly TextLine _intended;
    private readonly string _told;
    private readonly List<(string Name, double[] Shares, int[] Fills, TextLine Words)> _bars = [];

    /// <param name="width">Width, pt.</param>
    public SplitBar(ReviewDocument review, FontSet fonts, float width)
    {
        _week = review.Week;
        _told = review.Summary.SplitSentence.Length > 0 ? review.Summary.SplitSentence : "The split by time was not measured.";
        _width = width;
        _intended = TextLine.Of(fonts, Intended(), Styles.Quiet);
        if (_week.SplitByTime is { } time)
            _bars.Add(("by time", [time.Low, time.Middle, time.High], [0, 1, 2], TextLine.Of(fonts, Words(["low", "middle", "high"], [time.Low, time.Middle, time.High]), Styles.Body)));
        if (_week.SplitBySession is { } session)
            _bars.Add(("by session", [session.Easy, session.Hard], [0, 2], TextLine.Of(fonts, Words(["easy", "hard"], [session.Easy, session.Hard]), Styles.Body)));
    }

    /// <inheritdoc/>
    public override Tag? Tag => Drawing.Tag.Figure;

    /// <inheritdoc/>
    public override string? Alternative => _told;

    /// <inheritdoc/>
    public override float Height => _bars.Count == 0 ? TitleDepth - 5 : TitleDepth + (_bars.Count * (BarDepth + BarGap)) + 3;

    private float BarWidth => _width - NameRoom - Gap - _bars.Max(bar => bar.Words.Width);

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Text("Intensity split", Styles.Strong with { Size = 10.5f }, x, y + 10);
        _intended.Draw(surface, x + _width - _intended.Width, y + 10);
        if (_bars.Count == 0)
            return;
        float top = y + TitleDepth, at = top;
        foreach ((var name, var shares, var fills, var words) in _bars)
        {
            var baseline = at + BarDepth - 3;
            surface.Text(name, Styles.Quiet, x, baseline);
            DrawBar(surface, shares, fills, x + NameRoom, at);
            words.Draw(surface, x + _width - words.Width, baseline);
            at += BarDepth + BarGap;
        }

        if (_week is { SplitByTime: not null, IntendedLowShare: { } low })
            DrawTolerance(surface, low, x + NameRoom, top - Over, at - BarGap + 3);
    }

    private void DrawBar(Surface surface, double[] shares, int[] fills, float left, float y)
    {
        for (var part = 0; part < shares.Length; part++)
        {
            var right = left + (BarWidth * (float)shares[part]);
            Bands.Fill(surface, new Area(left, y, right, y + BarDepth), fills[part]);
            left = right;
        }
    }

    // A bracket over the bars, its ends carried down through them.
    private void DrawTolerance(Surface surface, double low, float left, float top, float foot)
    {
        var half = BarWidth * (float)(_week.SplitTolerance ?? 0);
        float at = left + (BarWidth * (float)low), from = Math.Max(at - half, left), to = Math.Min(at + half, left + BarWidth);
        surface.Line(from, top, to, top, Palette.Ink, 0.9f);
        foreach (var end in new[] { from, to })
        {
            surface.Line(end, top, end, foot, Palette.Paper, 2.6f);
            surface.Line(end, top, end, foot, Palette.Ink, 0.9f);
        }

        surface.Line(at, top - 3, at, top + 1.5f, Palette.Ink, 1.6f);
    }

    private string Intended()
    {
        if (_bars.Count == 0 && _week.SplitByTime is null)
            return "by time: not measured";
        if (_week.IntendedLowShare is not { } low)
            return "";
        return $"intended {Shown.Share(low)} low" + (_week.SplitTolerance is { } tolerance ? $" ±{Shown.Joint}{Shown.Points(tolerance * 100)}" : "");
    }

    private static string Words(string[] names, double[] shares) =>
        string.Join(", ", names.Select((name, part) => $"{Shown.Share(shares[part])}{Shown.Joint}{name}"));
}
