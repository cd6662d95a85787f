using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using RideAudit.Report.Fonts;
using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests.Svg;

public sealed class SvgPagesTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly FontSet Bare = new(new SystemFonts([]));

    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_letter_stands_where_it_stands_in_the_PDF(string name)
    {
        var pages = Draw(name);
        using var document = Drawn.Open(Write(name));

        Assert.Equal(document.NumberOfPages, pages.Pages.Length);
        foreach (var page in document.GetPages())
        {
            List<(string Letter, double X, double Y)> drawn = [.. Letters(pages.Pages[page.Number - 1])];
            List<Letter> printed = [.. page.Letters];
            Assert.Equal(string.Concat(printed.Select(letter => letter.Value)), string.Concat(drawn.Select(letter => letter.Letter)));
            for (var i = 0; i < drawn.Count; i++)
            {
                Assert.Equal(printed[i].StartBaseLine.X, drawn[i].X, 0.02);
                Assert.Equal(page.Height - printed[i].StartBaseLine.Y, drawn[i].Y, 0.02);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_link_leads_to_an_element_of_some_page(string name)
    {
        XElement[] pages = [.. Draw(name).Pages.Select(XElement.Parse)];
        HashSet<string> places = [.. pages.SelectMany(page => page.Descendants()).Attributes("id").Select(id => id.Value)];
        string[] targets = [.. pages.SelectMany(page => page.Descendants(Svg + "a")).Attributes("href").Select(href => href.Value)];

        Assert.Equal(Drawn.HasLinks(Drawn.Sample(name)), targets.Length > 0);
        Assert.All(targets, target => Assert.Contains(target[1..], places));
        Assert.Equal(places.Count, pages.SelectMany(page => page.Descendants()).Attributes("id").Count());
    }

    [Fact]
    public void What_a_rider_wrote_is_text_and_never_markup()
    {
        var review = SampleReviews.Middle();
        var pages = ReviewSvg.Draw(
            review with { Rider = review.Rider with { Label = "<script>a&b</script>\u0001\uFFFE" }, Note = "\"quoted\" ]]> <b>" }, new PageOptions(), Bare);
        var first = XElement.Parse(pages.Pages[0]);

        Assert.Contains("<script>a&b</script>", string.Concat(first.Descendants(Svg + "text").Select(text => text.Value)), StringComparison.Ordinal);
        Assert.DoesNotContain("<script", pages.Pages[0], StringComparison.Ordinal);
        Assert.Contains("<script>a&b</script>", first.Element(Svg + "title")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Bands_are_hatched_inside_their_blocks()
    {
        var first = XElement.Parse(Draw("middle").Pages[0]);
        XElement[] hatched = [.. first.Descendants(Svg + "g").Where(group => group.Attribute("clip-path") is not null)];

        Assert.NotEmpty(hatched);
        Assert.All(hatched, group => Assert.Contains("M", group.Element(Svg + "path")!.Attribute("d")!.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void A_page_that_stands_alone_carries_its_fonts_and_asks_nothing_of_a_network()
    {
        var pages = Draw("middle");
        var alone = pages.Standalone(0);
        var page = XElement.Parse(alone);
        string[] families = [.. page.Descendants(Svg + "text").Attributes("font-family").Select(family => family.Value).Distinct()];

        Assert.Equal(2, families.Length);
        Assert.All(families, family => Assert.Contains($"font-family:\"{family}\"", page.Element(Svg + "style")!.Value, StringComparison.Ordinal));
        Assert.Equal("http://www.w3.org/2000/svg", Assert.Single(alone.Split('"'), part => part.Contains("://", StringComparison.Ordinal)));
        Assert.DoesNotContain("font-face", pages.Pages[0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_card_is_one_picture_with_the_headline_and_what_to_change()
    {
        var review = SampleReviews.Middle();
        var card = ReviewSvg.Card(review);
        var words = Regex.Replace(string.Join(' ', XElement.Parse(Assert.Single(card.Pages)).Descendants(Svg + "text").Select(text => text.Value)), @"\s+", " ");

        Assert.StartsWith("0 0 540 ", XElement.Parse(card.Pages[0]).Attribute("viewBox")!.Value, StringComparison.Ordinal);
        Assert.NotEmpty(review.Summary.ToChange);
        Assert.All(
            review.Summary.ToChange.Select(change => change.Title).Prepend(review.Summary.Headline),
            text => Assert.Contains(Regex.Replace(text, @"\s+", " "), words, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_runs_draw_the_same() => Assert.Equal(string.Concat(Draw("high").Pages), string.Concat(Draw("high").Pages));

    private static SvgPages Draw(string name) => ReviewSvg.Draw(Drawn.Sample(name), new PageOptions { Paper = Drawn.PaperOf(name) }, Bare);

    private static byte[] Write(string name)
    {
        using var stream = new MemoryStream();
        ReviewPdf.Write(Drawn.Sample(name), stream, new PageOptions { Paper = Drawn.PaperOf(name) }, Bare);
        return stream.ToArray();
    }

    private static IEnumerable<(string Letter, double X, double Y)> Letters(string page)
    {
        foreach (var text in XElement.Parse(page, LoadOptions.PreserveWhitespace).Descendants(Svg + "text"))
        {
            double[] across = [.. text.Attribute("x")!.Value.Split(' ').Select(Number)];
            var down = Number(text.Attribute("y")!.Value);
            double[] moved = text.Attribute("transform") is { } matrix ? [.. matrix.Value[7..^1].Split(' ').Select(Number)] : [1, 0, 0, 1, 0, 0];
            var at = 0;
            foreach (var rune in text.Value.EnumerateRunes())
                yield return (rune.ToString(), across[at++] + moved[4], down + moved[5]);
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
