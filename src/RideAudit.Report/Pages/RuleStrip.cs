using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
using RideAudit.Report.Words;
using RideAudit.Rules;

namespace RideAudit.Report.Pages;

/// <summary>Rule by week for up to eight weeks, by marks: first time or habit. Beside it each rule's figure of this week, in a line.</summary>
/// <param name="marks">What each rule rests on.</param>
/// <param name="width">Width, pt.</param>
internal sealed class RuleStrip(ReviewDocument review, SourceMarks marks, FontSet fonts, float width)
{
    private const float NameRoom = 106;
    private const float Cell = 17;
    private const float Gap = 12;

    private ReviewDocument Review => review;

    private SourceMarks Sources => marks;

    private FontSet Fonts => fonts;

    private float Width => width;

    private ImmutableArray<RuleHistoryEntry.Week> Weeks => review.RuleHistory.IsEmpty ? [] : review.RuleHistory[0].Weeks;

    /// <summary>A head and a row a rule: broken first, then as the method orders them.</summary>
    public IEnumerable<Block> Blocks()
    {
        yield return new TextBlock(fonts, Head(), Styles.Strong, width) { SpaceBefore = 9, KeepWithNext = true };
        yield return new Heads(this) { KeepWithNext = true };
        var before = "";
        foreach (var finding in review.Findings.OrderByDescending(finding => finding.Verdict))
        {
            // One reason for many rules is told beside the first of them.
            var words = Words(finding);
            yield return new Row(this, finding, finding.Verdict == Verdict.NotJudged && words == before ? "" : words);
            before = words;
        }

        yield return new HairlineBlock(width, 2);
    }

    private string Head() => Weeks.Length > 1 ? $"Every rule over the last {Shown.Tally(Weeks.Length, "week")}" : "Every rule";

    private float Left(int week) => NameRoom + (Cell * week);

    private float WordsAt => NameRoom + (Cell * Math.Max(1, Weeks.Length)) + Gap;

    private string Words(Finding finding) => finding.Verdict switch
    {
        Verdict.NotJudged => "not judged: " + (finding.Reason ?? finding.Sentence).TrimEnd('.'),
        Verdict.Kept => finding.Held ?? finding.Sentence.TrimEnd('.'),
        _ => Formatting.Words.Of(finding.Verdict),
    };

    /// <summary>First days of the weeks, every other one.</summary>
    private sealed class Heads(RuleStrip strip) : Block
    {
        public override float Height => Styles.Tiny.Leading + 3;

        public override void Draw(Surface surface, float x, float y)
        {
            var baseline = y + Styles.Tiny.Ascent;
            for (var week = strip.Weeks.Length - 1; week >= 0; week -= 2)
                surface.Text(Shown.ShortDate(strip.Weeks[week].StartsOn), Styles.Tiny, x + strip.Left(week) + (Cell / 2), baseline, Align.Middle);
            surface.Text("this week", Styles.Tiny, x + strip.WordsAt, baseline);
        }
    }

    /// <summary>One rule.</summary>
    private sealed class Row : Block
    {
        private const float Air = 0.9f;
        private readonly RuleStrip _strip;
        private readonly Finding _finding;
        private readonly List<TextLine> _words;
        private readonly TextLine _name;

        public Row(RuleStrip strip, Finding finding, string said)
        {
            _strip = strip;
            _finding = finding;
            var mark = strip.Sources.Of(finding.Rule);
            _name = TextLine.Of(strip.Fonts, [new Span(finding.Name, Styles.SmallInk), new Span(" " + mark, Styles.Small)]);
            var style = finding.Verdict == Verdict.NotJudged ? Styles.Small : Styles.SmallInk;
            _words = LineBreaker.Clip(strip.Fonts, new Span(said, style), strip.Width - strip.WordsAt, mostLines: finding.Verdict == Verdict.NotJudged ? 2 : 1);
        }

        public override float Height => (2 * Air) + Math.Max(_name.Leading, _words.Sum(line => line.Leading));

        public override void Draw(Surface surface, float x, float y)
        {
            surface.Hairline(x, x + _strip.Width, y);
            var baseline = y + Air + Styles.SmallInk.Ascent;
            if (_finding.Verdict is Verdict.Kept or Verdict.NotJudged)
                surface.Anchor(x, y, Places.Rule(_finding.Rule));
            _name.Draw(surface, x, baseline);
            var weeks = _strip.Review.RuleHistory.FirstOrDefault(entry => entry.Rule == _finding.Rule)?.Weeks
                ?? [new RuleHistoryEntry.Week(_strip.Review.Week.StartsOn, _finding.Verdict)];
            var side = VerdictMark.Side(Styles.Small.Size);
            for (var week = 0; week < weeks.Length; week++)
                VerdictMark.Draw(surface, weeks[week].Verdict, x + _strip.Left(week) + ((Cell - side) / 2), baseline, Styles.Small.Size);
            var at = y + Air;
            foreach (var line in _words)
            {
                line.Draw(surface, x + _strip.WordsAt, at + line.Ascent);
                at += line.Leading;
            }
        }
    }
}
