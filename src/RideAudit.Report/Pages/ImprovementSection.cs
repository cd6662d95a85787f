using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>Is the rider improving? Four small series over the season, each with what it comes to and why not to lean on it.</summary>
/// <param name="width">Width, pt.</param>
internal sealed class ImprovementSection(ReviewDocument review, FontSet fonts, float width)
{
    private static readonly int[] Windows = [60, 300, 1200];

    /// <summary>The section's blocks; none where nothing was looked at.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (review.Progress is not { } progress)
            yield break;
        yield return new SectionHead(fonts, "Is the rider improving?", width) { SpaceBefore = 10, KeepWithNext = true, Outline = "Is the rider improving?" };
        SmallPlot[] plots =
        [
            new("W", 0, [Series(progress.EasyPowerW)]),
            new("%", 1, [Series(progress.LongRideDriftPercent)]),
            new("W", 0, [.. Windows.Select(seconds => Bests(progress, seconds))]),
            new("W", 0, [Threshold()]) { Steps = true },
        ];
        ProgressEntry.Told[] told = [progress.EasyPower, progress.Drift, progress.Best, progress.Threshold];
        int[] drawn = [.. Enumerable.Range(0, plots.Length).Where(plot => !plots[plot].IsEmpty)];
        if (drawn.Length > 0)
            yield return new Multiples([.. drawn.Select(plot => told[plot])], [.. drawn.Select(plot => plots[plot])], fonts, width) { KeepWithNext = drawn.Length < plots.Length };
        // What has nothing to draw is told in a line: an empty chart says no more.
        if (drawn.Length < plots.Length)
            yield return new TextBlock(fonts, string.Join(' ', told.Where((_, plot) => !drawn.Contains(plot)).Select(one => one.Sentence)), Styles.SmallInk, width) { SpaceBefore = 3 };
    }

    private static SmallPlot.Series Series(ImmutableArray<ProgressEntry.Figure> figures) =>
        new("", [.. figures.Select(figure => (figure.Date, figure.Value))]);

    private static SmallPlot.Series Bests(ProgressEntry progress, int seconds) => new(
        Formatting.Shown.Window(seconds),
        [
            .. progress.Bests.SelectMany(block => block.Bests.Where(best => best.Seconds == seconds).Select(best => (block.EndsOn, best.MeanPowerW))),
        ]);

    private SmallPlot.Series Threshold()
    {
        if (review.Thresholds is not { InForce.IsEmpty: false } thresholds)
            return new("", []);
        return new("", [.. thresholds.InForce.Select(step => (step.From, step.PowerW)), (review.Week.Days[^1].Date, thresholds.InForce[^1].PowerW)]);
    }

    /// <summary>The series side by side.</summary>
    private sealed class Multiples : Block
    {
        private const float Gap = 16;
        private const float PlotDepth = 47;
        private const int Columns = 4;
        private readonly ProgressEntry.Told[] _told;
        private readonly SmallPlot[] _plots;
        private readonly float _column;
        private readonly List<TextLine>[] _sentences;
        private readonly List<TextLine>[] _cautions;

        public Multiples(ProgressEntry.Told[] told, SmallPlot[] plots, FontSet fonts, float width)
        {
            (_told, _plots) = (told, plots);
            _column = (width - (Gap * (Columns - 1))) / Columns;
            _sentences = [.. told.Select(one => LineBreaker.Break(fonts, [new Span(one.Sentence, Styles.SmallInk)], _column))];
            _cautions = [.. told.Select((one, i) => plots[i].IsEmpty ? [] : LineBreaker.Break(fonts, [new Span(one.Caution, Styles.Tiny)], _column))];
        }

        public override Tag? Tag => Drawing.Tag.Figure;

        public override string? Alternative => string.Join(' ', _told.Select(one => $"{one.Sentence} {one.Caution}"));

        public override float Height => SentenceDepth + PlotDepth + Deepest(_cautions) + 6;

        private float SentenceDepth => Deepest(_sentences);

        public override void Draw(Surface surface, float x, float y)
        {
            for (var i = 0; i < _plots.Length; i++)
            {
                var left = x + (i * (_column + Gap));
                Lines(surface, _sentences[i], left, y);
                _plots[i].Draw(surface, new Area(left, y + SentenceDepth + 4, left + _column, y + SentenceDepth + PlotDepth));
                Lines(surface, _cautions[i], left, y + SentenceDepth + PlotDepth + 4);
            }
        }

        private static float Deepest(List<TextLine>[] texts) => texts.Max(lines => lines.Sum(line => line.Leading));

        private static void Lines(Surface surface, List<TextLine> lines, float x, float y)
        {
            foreach (var line in lines)
            {
                line.Draw(surface, x, y + line.Ascent);
                y += line.Leading;
            }
        }
    }
}
