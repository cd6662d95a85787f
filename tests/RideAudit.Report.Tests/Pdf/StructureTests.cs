using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace RideAudit.Report.Tests.Pdf;

/// <summary>The structure tree, read back with another library.</summary>
public sealed class StructureTests
{
    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_letter_is_part_of_something_that_is_read_or_of_the_furniture(string name)
    {
        using var document = Drawn.Open(Drawn.Write(Drawn.Sample(name), Drawn.PaperOf(name), appendix: true));
        foreach (var page in document.GetPages())
            Assert.Equal(page.Letters.Count, page.GetMarkedContents().Sum(part => part.Letters.Count));
    }

    [Theory]
    [InlineData("middle")]
    [InlineData("no-rides")]
    [InlineData("twenty-one-rides")]
    public void Elements_are_read_in_the_order_of_the_pages_and_every_figure_has_a_text(string name)
    {
        using var document = Drawn.Open(Drawn.Write(Drawn.Sample(name), appendix: true));
        var elements = Elements(document);

        Assert.Equal("H1", elements[1].Type);
        Assert.Single(elements, element => element.Type == "H1");
        Assert.All(elements, element => Assert.Equal(element.Type == "Figure", !string.IsNullOrWhiteSpace(element.Alternative)));
        foreach (var page in document.GetPages())
        {
            var own = elements.Where(element => element.Page == page.Number).Select(element => element.Place).ToArray();
            Assert.Equal(Enumerable.Range(0, own.Length), own);
            var marked = page.GetMarkedContents().Where(part => part.MarkedContentIdentifier >= 0).ToDictionary(part => part.MarkedContentIdentifier, part => part.Tag);
            Assert.Equal(own.Length, marked.Count);
            Assert.All(elements.Where(element => element.Page == page.Number), element => Assert.Equal(element.Type, marked[element.Place]));
        }
    }

    [Fact]
    public void Headings_are_what_stands_as_headings()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        string[] headings = [.. Headings(document)];

        Assert.Equal(Bare(Drawn.Sample("middle").Summary.Headline), Bare(headings[0]));
        Assert.Equal(["The rides", "Is the rider improving?"], headings.Skip(2));
    }

    [Fact]
    public void The_spacing_line_is_told_day_by_day_with_its_spans_and_the_smallest_change()
    {
        var review = Drawn.Sample("middle");
        using var document = Drawn.Open("middle", Paper.A4);
        var told = Elements(document).First(element => element.Type == "Figure").Alternative!;

        Assert.All(review.Week.Days, day => Assert.Contains($"{day.Date.DayOfWeek} {day.KindInWords}", told, StringComparison.Ordinal));
        Assert.Contains("Between hard rides: Tue 9 to Wed 10 22.9 h (broken)", told, StringComparison.Ordinal);
        Assert.Contains(Drawn.Plain(review.SmallestChange!.Sentence), told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_riders_row_of_marks_is_told_rule_by_rule()
    {
        var roster = SampleRosters.EveryState();
        using var stream = new MemoryStream();
        RosterPdf.Write(roster, stream, new PageOptions());
        using var document = Drawn.Open(stream.ToArray());
        string[] told = [.. Elements(document).Where(element => element.Type == "Figure").Select(element => element.Alternative!)];

        Assert.Equal(roster.Riders.Length, told.Length);
        foreach (var (rider, text) in roster.Riders.Zip(told))
            Assert.All(rider.Verdicts, verdict => Assert.Contains(verdict.Name, text, StringComparison.Ordinal));
    }

    // Between two lines of one heading stands no space.
    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static IEnumerable<string> Headings(PdfDocument document) => Elements(document)
        .Where(element => element.Type is "H1" or "H2")
        .Select(element => Drawn.Plain(string.Concat(document.GetPage(element.Page).GetMarkedContents().Single(part => part.MarkedContentIdentifier == element.Place).Letters.Select(letter => letter.Value))));

    private static List<(string Type, int Page, int Place, string? Alternative)> Elements(PdfDocument document)
    {
        T Get<T>(IToken token) where T : IToken => token is IndirectReferenceToken link ? (T)document.Structure.GetObject(link.Data).Data : (T)token;
        var catalog = document.Structure.Catalog.CatalogDictionary.Data;
        Assert.Equal("true", Get<DictionaryToken>(catalog["MarkInfo"]).Data["Marked"].ToString()!.ToLowerInvariant());
        var pages = document.GetPages().ToDictionary(page => ((NumericToken)page.Dictionary.Data["StructParents"]).Int, page => page.Number);
        var root = Get<DictionaryToken>(catalog["StructTreeRoot"]);
        var numbers = Get<ArrayToken>(Get<DictionaryToken>(root.Data["ParentTree"]).Data["Nums"]);
        var found = new List<(string, int, int, string?)>();
        for (var i = 0; i < numbers.Length; i += 2)
        {
            foreach (var reference in Get<ArrayToken>(numbers[i + 1]).Data)
            {
                var element = Get<DictionaryToken>(reference).Data;
                var alternative = element.TryGetValue("Alt", out var text) ? Text(text) : null;
                found.Add((((NameToken)element["S"]).Data, pages[((NumericToken)numbers[i]).Int], ((NumericToken)element["K"]).Int, alternative));
            }
        }

        Assert.Equal(found.Count, Get<ArrayToken>(Get<DictionaryToken>(root.Data["K"]).Data["K"]).Length);
        return found;
    }

    private static string Text(IToken token) => token switch
    {
        StringToken text => text.Data,
        HexToken hex => System.Text.Encoding.BigEndianUnicode.GetString(hex.Bytes.ToArray()[2..]),
        _ => throw new InvalidOperationException(token.GetType().Name),
    };
}
