using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The review for a phone: one portrait card with the headline, the spacing line, three things to change, one line on data and one caution.</summary>
/// <remarks>Drawn at two pixels a point it is 1080 px wide and has no text under 26 px. It is as tall as it must be: nothing is cut.</remarks>
internal sealed class CardPages : IPages
{
    /// <summary>Width, pt: 1080 px at <see cref="Scale"/>.</summary>
    public const float Width = 540;

    /// <summary>Pixels a point.</summary>
    public const int Scale = 2;

    /// <summary>The smallest text, pt: 26 px.</summary>
    public const float LeastSize = 13;

    private const float Margin = 34;
    private const float LeastHeight = 560;
    private const float Gap = 20;
    private static readonly TextStyle Head = new(Weight.Regular, 14, Palette.Quiet);
    private static readonly TextStyle Headline = new(Weight.SemiBold, 32, Palette.Ink);
    private static readonly TextStyle Title = new(Weight.SemiBold, 18, Palette.Ink);
    private static readonly TextStyle Detail = new(Weight.Regular, 14, Palette.Quiet);
    private static readonly TextStyle Number = new(Weight.SemiBold, 18, Palette.Rust);
    private static readonly TextStyle Small = new(Weight.Regular, LeastSize, Palette.Quiet);
    private readonly List<Placed> _placed = [];

    public CardPages(ReviewDocument review, FontSet fonts)
    {
        float width = Width - (2 * Margin), y = Margin;
        foreach ((var block, var before) in Blocks(review, fonts, width))
        {
            _placed.Add(new Placed(block, y + before));
            y += before + block.Height;
        }

        Block[] foot = [.. Foot(review, fonts, width)];
        float depth = foot.Sum(block => block.Height + block.SpaceBefore), height = Math.Max(LeastHeight, y + Gap + depth + Margin);
        y = height - Margin - depth;
        foreach (var block in foot)
        {
            _placed.Add(new Placed(block, y + block.SpaceBefore));
            y += block.SpaceBefore + block.Height;
        }

        Sheet = new Sheet(Width, height, Margin);
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => 1;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline => [];

    /// <inheritdoc/>
    public void Draw(int page, Surface surface)
    {
        foreach ((var block, var y) in _placed)
            block.Draw(surface, Margin, y);
    }

    private static IEnumerable<(Block Block, float Before)> Blocks(ReviewDocument review, FontSet fonts, float width)
    {
        var week = $"Week of {Shown.FullDate(review.Week.StartsOn)}{(review.Week.Finished ? "" : ", not finished")}";
        yield return (new TextBlock(fonts, [new Span(review.Rider.Label, Head with { Weight = Weight.SemiBold, Colour = Palette.Ink }), new Span("  " + week, Head)], width), 0);
        yield return (new TextBlock(VerdictBlock.Headline(review.Summary.Headline, Headline, fonts, width)), 14);
        yield return (new CardLine(review, fonts, width, LeastSize), Gap);
        var before = Gap + 6;
        for (var i = 0; i < review.Summary.ToChange.Length; i++)
        {
            yield return (new CardAdvice(review, i, fonts, width, Number, Title, Detail), before);
            before = 14;
        }

        if (review.Summary.ToChange.IsEmpty && !review.Summary.Held.IsEmpty)
            yield return (new TextBlock(fonts, [new Span("What held  ", Title), new Span(string.Join(" · ", review.Summary.Held), Detail with { Colour = Palette.Ink, Size = 16 })], width), before);
    }

    private static IEnumerable<Block> Foot(ReviewDocument review, FontSet fonts, float width)
    {
        yield return new HairlineBlock(width, 10);
        yield return new TextBlock(fonts, DataWords.Of(review), Small, width);
        var caution = review.Summary.Cautions.FirstOrDefault(text => text.Contains("doctor", StringComparison.Ordinal)) ?? review.Summary.Cautions.FirstOrDefault() ?? "";
        yield return new TextBlock(fonts, caution, Small, width) { SpaceBefore = 4 };
    }
}
