using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Tests.Samples;
using RideAudit.Report.Text;

namespace RideAudit.Report.Tests.Text;

public sealed class LineBreakerTests
{
    private static readonly FontSet Fonts = FontSet.OfThisMachine;

    [Theory]
    [InlineData("A plain sentence of some length that needs more than one line to be set in so little room.")]
    [InlineData("averyveryverylongwordthatisfarwiderthanthelineandmustbecutsomewhereorotheritwouldleavethepage")]
    [InlineData("2026/old/rides/from/a/deep/folder/with/many/parts/and/a-long-name-at-the-end.fit")]
    [InlineData("選手の週の要約は、長い文でも行の幅を超えてはならない。必ず折り返す。")]
    public void No_line_is_wider_than_asked(string text)
    {
        var fonts = MadeFont.With("選手の週の要約は、長い文でも行の幅を超えてはならない。必ず折り返す。");
        var lines = LineBreaker.Break(fonts, [new Span(text, Styles.Body)], 120);

        Assert.True(lines.Count > 1);
        Assert.All(lines, line => Assert.True(line.Width <= 120.01f, $"{line.Width} pt"));
    }

    [Fact]
    public void A_figure_and_its_unit_stay_together()
    {
        var width = Styles.Body.Measure(Fonts, "ridden 1\u00A0h") - 2;
        var lines = LineBreaker.Break(Fonts, [new Span("ridden 1\u00A0h", Styles.Body)], width);

        Assert.Equal(Styles.Body.Measure(Fonts, "ridden"), lines[0].Width, 2);
    }

    [Theory]
    [InlineData("grew by 10\u00A0%.")]
    [InlineData("one held · another")]
    public void No_line_starts_with_a_unit_or_a_parting_dot(string text)
    {
        var gap = text.IndexOfAny(['%', '·']) - 1;
        var width = Styles.Body.Measure(Fonts, text[..gap]) + 1;

        Assert.DoesNotContain(LineBreaker.Break(Fonts, [new Span(text, Styles.Body)], width), line => line.Text[0] is '%' or '·');
    }

    [Fact]
    public void A_balanced_heading_has_lines_of_about_one_length()
    {
        Span heading = new("Two hard rides 23 hours apart and then no long easy ride", Styles.Section);
        List<TextLine> plain = LineBreaker.Break(Fonts, [heading], 400), balanced = LineBreaker.Balance(Fonts, heading, 400);

        Assert.Equal(plain.Count, balanced.Count);
        Assert.True(balanced.Max(line => line.Width) - balanced.Min(line => line.Width) < plain.Max(line => line.Width) - plain.Min(line => line.Width));
    }

    [Fact]
    public void An_ellipsis_is_set_only_where_text_was_cut()
    {
        Assert.Equal("Rider A", TextLine.FitText(Fonts, "Rider A", Styles.Body, 200));
        var cut = TextLine.FitText(Fonts, "A label that is too long for its place", Styles.Body, 60);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.True(Styles.Body.Measure(Fonts, cut) <= 60);
    }

    [Fact]
    public void An_empty_text_is_one_empty_line() => Assert.Equal(0, Assert.Single(LineBreaker.Break(Fonts, [new Span("", Styles.Body)], 100)).Width);
}
