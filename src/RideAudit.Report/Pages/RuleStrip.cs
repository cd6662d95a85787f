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

/// <summary>Kept rules and those not judged, by week for up to eight weeks. Beside each its figure of this week, in a line.</summary>
/// <param name="review">The review.</param>
/// <param name="marks">What each rule rests on.</param>
/// <param name="width">Width, pt.</param>
internal sealed class RuleStrip(ReviewDocument review, SourceMarks marks, FontSet fonts, float width)
{
    private const float NameRoom = 106;
    private const float Cell = 17;
    private const float Gap = 12;

    private IEnumerable<Finding> Others => review.Findings.Where(finding => finding.Verdict is Verdict.Kept or Verdict.NotJudged);

    private ReviewDocument Review => review;

    private SourceMarks Sources => marks;

    private FontSet Fonts => fonts;

    private float Width => width;

    private ImmutableArray<RuleHistoryEntry.Week> Weeks => review.RuleHistory.IsEmpty ? [] : review.RuleHistory[0].Weeks;

    /// <summary>A head and a row a rule: kept first, then as the method orders them.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (!Others.Any())
            yield break;
        yield return new TextBlock(fonts, Head(), Styles.Strong, width) { SpaceBefore = 9, KeepWithNext = true };
        yield return new Heads(this) { KeepWithNext = true };
        var before = "";
        foreach (var finding in Others.OrderByDescending(finding => finding.Verdict).ThenBy(Reason))
        {
            // One reason for many rules is told beside the first of them.
            var words = Words(finding);
            yield return new Row(this, finding, finding.Verdict == Verdict.NotJudged && words == before ? "as above" : words);
            before = words;
        }

        yield return new HairlineBlock(width, 2);
    }

    // Rules that are open for one reason stand together, in the order of the first of them.
    private int Reason(Finding finding) => finding.Verdict != Verdict.NotJudged ? 0 : review.Findings.IndexOf(review.Findings.First(other => other.Verdict == Verdict.NotJudged && other.Reason == finding.Reason));

    private string Head()
    {
        var all = Others.Count() == review.Findings.Length ? "Every rule" : "The other rules";
        return Weeks.Length > 1 ? $"{all} over the last {Shown.Tally(Weeks.Length, "week")}" : all;
    }

    private float Left(int week) => NameRoom + (Cell * week);

    private float WordsAt => NameRoom + (Cell * Math.Max(1, Weeks.Length)) + Gap;

    private static string Words(Finding finding) => finding.Verdict == Verdict.NotJudged
        ? "not judged: " + (finding.Reason ?? finding.Sentence).TrimEnd('.')
        : finding.Figure ?? Formatting.Words.Of(finding.Verdict);

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
        private readonly ImmutableArray<RuleHistoryEntry.Week> _weeks;

        public Row(RuleStrip strip, Finding finding, string said)
        {
            _strip = strip;
            _finding = finding;
            _weeks = strip.Review.RuleHistory.FirstOrDefault(entry => entry.Rule == finding.Rule)?.Weeks
                ?? [new RuleHistoryEntry.Week(strip.Review.Week.StartsOn, finding.Verdict)];
            var mark = strip.Sources.Of(finding.Rule);
            _name = TextLine.Of(strip.Fonts, [new Span(finding.Name, Styles.SmallInk), new Span(" " + mark, Styles.Small)]);
            var style = finding.Verdict == Verdict.NotJudged ? Styles.Small : Styles.SmallInk;
            _words = LineBreaker.Clip(strip.Fonts, new Span(said, style), strip.Width - strip.WordsAt, mostLines: finding.Verdict == Verdict.NotJudged ? 2 : 1);
        }

        public override Tag? Tag => Drawing.Tag.Figure;

        public override string? Alternative => $"{_finding.Name}: {Formatting.Words.Of(_finding.Verdict)}. {_finding.Sentence} {Before}".Trim();

        private string Before => _weeks.Length < 2 ? "" : $"Before: {string.Join(", ", _weeks.Take(_weeks.Length - 1).Select(week => Formatting.Words.Of(week.Verdict)))}.";

        public override float Height => (2 * Air) + Math.Max(_name.Leading, _words.Sum(line => line.Leading));

        public override void Draw(Surface surface, float x, float y)
        {
            surface.Hairline(x, x + _strip.Width, y);
            var baseline = y + Air + Styles.SmallInk.Ascent;
            surface.Anchor(x, y, Places.Rule(_finding.Rule));
            _name.Draw(surface, x, baseline);
            var side = VerdictMark.Side(Styles.Small.Size);
            for (var week = 0; week < _weeks.Length; week++)
                VerdictMark.Draw(surface, _weeks[week].Verdict, x + _strip.Left(week) + ((Cell - side) / 2), baseline, Styles.Small.Size);
            var at = y + Air;
            foreach (var line in _words)
            {
                line.Draw(surface, x + _strip.WordsAt, at + line.Ascent);
                at += line.Leading;
            }
        }
    }
}
