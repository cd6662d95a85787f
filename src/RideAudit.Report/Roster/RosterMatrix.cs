using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;
using RideAudit.Report.Text;
using RideAudit.Report.Words;

namespace RideAudit.Report.Roster;

/// <summary>Riders by rules, a mark each, with the rider's need in a word beside them.</summary>
internal sealed class RosterMatrix
{
    private const float NumberEnd = 14;
    private const float MarkAt = 22;
    private const float NeedAt = 33;
    private const float LabelAt = 92;
    private const float MostCell = 16;
    private const float LeastLabel = 120;
    private const float HeadLeading = 8.8f;
    private readonly RosterDocument _roster;
    private readonly FontSet _fonts;
    private readonly float _width;
    private readonly ImmutableArray<RosterEntry.RuleVerdict> _rules;

    /// <param name="width">Width, pt.</param>
    public RosterMatrix(RosterDocument roster, FontSet fonts, float width)
    {
        (_roster, _fonts, _width) = (roster, fonts, width);
        _rules = [.. roster.Riders.SelectMany(rider => rider.Verdicts).DistinctBy(verdict => verdict.Rule)];
        Heads = new HeadBlock(this) { KeepWithNext = true };
    }

    /// <summary>The rules' names over their columns.</summary>
    public Block Heads { get; }

    private float Cell => Math.Min(MostCell, (_width - LabelAt - LeastLabel) / Math.Max(1, _rules.Length));

    private float CellsAt => _width - (Cell * _rules.Length);

    /// <summary>A row a rider; the outline has a line where a need begins.</summary>
    public IEnumerable<Block> Rows()
    {
        RosterNeed? need = null;
        for (var i = 0; i < _roster.Riders.Length; i++)
        {
            var rider = _roster.Riders[i];
            var opens = rider.Need != need;
            need = rider.Need;
            yield return new Row(this, rider, i)
            {
                RunningHead = Heads,
                Outline = opens ? Shown.Capital(Formatting.Words.Of(rider.Need)) : null,
            };
        }
    }

    private float Centre(int rule) => CellsAt + (Cell * (rule + 0.5f));

    /// <summary>Names on steps, each over a line that leads down to its column.</summary>
    private sealed class HeadBlock(RosterMatrix matrix) : Block
    {
        private const float Foot = 3;

        public override float Height => (matrix._rules.Length * HeadLeading) + Foot;

        public override void Draw(Surface surface, float x, float y)
        {
            var count = matrix._rules.Length;
            for (var rule = 0; rule < count; rule++)
            {
                float baseline = y + ((count - rule) * HeadLeading) - 2, centre = x + matrix.Centre(rule);
                surface.Line(centre, baseline + 2, centre, y + Height, Palette.Hairline, 0.6f);
                surface.Text(matrix._rules[rule].Name, Styles.Tiny, centre + 2, baseline, Align.End);
            }
        }
    }

    /// <summary>One rider.</summary>
    private sealed class Row : Block
    {
        private const float Air = 1.2f;
        private readonly RosterMatrix _matrix;
        private readonly RosterEntry _rider;
        private readonly int _place;
        private readonly TextLine _label;

        public Row(RosterMatrix matrix, RosterEntry rider, int place)
        {
            (_matrix, _rider, _place) = (matrix, rider, place);
            var room = matrix.CellsAt - LabelAt - 6;
            var label = TextLine.FitText(matrix._fonts, rider.Label, Styles.Body, room);
            _label = TextLine.Of(matrix._fonts, [new Span(label, Styles.Body, Places.Rider(place))]);
        }

        public override Tag? Tag => Drawing.Tag.Figure;

        public override string? Alternative => RosterWords.Verdicts(_rider);

        public override float Height => (2 * Air) + Styles.Body.Leading;

        public override void Draw(Surface surface, float x, float y)
        {
            surface.Hairline(x, x + _matrix._width, y);
            var baseline = y + Air + Styles.Body.Ascent;
            surface.Text(Shown.Number(_place + 1), Styles.Quiet, x + NumberEnd, baseline, Align.End);
            RosterWords.DrawNeed(surface, _rider, x + MarkAt, x + NeedAt, baseline);
            _label.Draw(surface, x + LabelAt, baseline);
            var side = VerdictMark.Side(Styles.Small.Size);
            for (var rule = 0; rule < _matrix._rules.Length; rule++)
            {
                if (_rider.Verdicts.FirstOrDefault(verdict => verdict.Rule == _matrix._rules[rule].Rule) is { } known)
                    VerdictMark.Draw(surface, known.Verdict, x + _matrix.Centre(rule) - (side / 2), baseline, Styles.Small.Size);
            }
        }
    }
}
