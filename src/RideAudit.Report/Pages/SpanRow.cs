using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>The hours between hard rides, drawn above the blocks they part.</summary>
/// <param name="places">Where the week's rides stand.</param>
internal sealed class SpanRow(ImmutableArray<SpanEntry> spans, IReadOnlyDictionary<string, Area> places, FontSet fonts)
{
    private const float LineAt = 24;
    private const float LabelAt = 17;
    private const float UpperLabelAt = 5;
    private const float MarkSize = 9;
    private const float MarkRoom = 11;
    private const float LabelGap = 6;

    /// <summary>Draws between the week's edges with the row's top at <paramref name="y"/>.</summary>
    public void Draw(Surface surface, float left, float right, float y)
    {
        float taken = float.MinValue, takenAbove = float.MinValue;
        foreach (var span in spans)
        {
            var before = !places.TryGetValue(span.FromRide, out var from);
            if (!places.TryGetValue(span.ToRide, out var to))
                continue;
            var start = before ? left : from.Right;
            DrawLine(surface, span, start, to.Left, y + LineAt, before);
            var label = Label(span, before);
            var room = label.Width + (IsWanting(span) ? MarkRoom : 0);
            var x = Math.Clamp((start + to.Left - room) / 2, left, right - room);
            var above = x < taken + LabelGap;
            if (above)
                x = Math.Max(x, takenAbove + LabelGap);
            DrawLabel(surface, span, label, x, y + (above ? UpperLabelAt : LabelAt));
            if (above)
                takenAbove = x + room;
            else
                taken = x + room;
        }
    }

    // A span that no rule judged (an event week) is drawn like a kept one.
    private static bool IsWanting(SpanEntry span) => span.Verdict is Verdict.Watch or Verdict.Broken;

    private static Colour Colour(SpanEntry span) => IsWanting(span) ? Palette.Rust : Palette.Quiet;

    private static void DrawLine(Surface surface, SpanEntry span, float start, float end, float y, bool before)
    {
        var width = span.Verdict switch { Verdict.Broken => 1.8f, Verdict.Watch => 1.2f, _ => 0.7f };
        var colour = Colour(span);
        surface.Line(start, y, end, y, colour, width, before ? 3 : 0);
        if (!before)
            surface.Line(start, y - 3.5f, start, y + 3.5f, colour, width);
        surface.Line(end, y - 3.5f, end, y + 3.5f, colour, width);
    }

    private static void DrawLabel(Surface surface, SpanEntry span, TextLine label, float x, float baseline)
    {
        if (IsWanting(span))
        {
            VerdictMark.Draw(surface, span.Verdict, x, baseline, MarkSize);
            x += MarkRoom;
        }

        label.Draw(surface, x, baseline);
    }

    private TextLine Label(SpanEntry span, bool before)
    {
        var wanting = IsWanting(span);
        TextStyle style = new(wanting ? Weight.SemiBold : Weight.Regular, 10, Colour(span));
        return TextLine.Of(fonts, Shown.Hours(span.Hours, 0) + (before ? " since the last" : ""), style);
    }
}
