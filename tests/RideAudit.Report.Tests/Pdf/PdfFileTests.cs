using System.Globalization;
using RideAudit.Report.Tests.Samples;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace RideAudit.Report.Tests.Pdf;

public sealed class PdfFileTests
{
    private const int LargestUsualFile = 1_000_000;

    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Two_runs_write_the_same_bytes(string name) =>
        Assert.Equal(Drawn.Write(Drawn.Sample(name)), Drawn.Write(Drawn.Sample(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_file_is_under_a_megabyte(string name) => Assert.True(Drawn.Pdf(name, Drawn.PaperOf(name)).Length < LargestUsualFile);

    [Fact]
    public void Title_producer_and_dates_come_from_the_review()
    {
        using var document = Drawn.Open("middle", Paper.A4);

        Assert.Equal("Rider A, week of 8 June 2026", document.Information.Title);
        Assert.Equal("RideAudit", document.Information.Producer);
        Assert.Equal("D:20260615", document.Information.CreationDate);
        Assert.Equal("D:20260615", document.Information.ModifiedDate);
    }

    [Fact]
    public void Nothing_of_the_machine_is_in_the_file()
    {
        var before = CultureInfo.CurrentCulture;
        var strange = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        strange.NumberFormat.NumberDecimalSeparator = ",";
        strange.NumberFormat.NegativeSign = "~";
        strange.NumberFormat.NumberGroupSizes = [1];
        strange.DateTimeFormat.DateSeparator = "!";
        try
        {
            CultureInfo.CurrentCulture = strange;
            Assert.Equal(Drawn.Pdf("event", Paper.A4), Drawn.Write(Drawn.Sample("event")));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_font_of_the_machine_is_embedded_for_what_Inter_lacks_and_its_text_is_copied_out_as_written()
    {
        const string label = "選手あ 二番 東京";
        using var stream = new MemoryStream();
        ReviewPdf.Write(SampleReviews.Japanese(), stream, new PageOptions(), MadeFont.With(label.Replace(" ", "", StringComparison.Ordinal)));
        using var document = Drawn.Open(stream.ToArray());

        Assert.StartsWith(label, Drawn.TextOf(document.GetPage(1)), StringComparison.Ordinal);
        Assert.Contains(document.GetPage(1).Letters, letter => letter.FontName!.EndsWith("+Font", StringComparison.Ordinal));
    }

    [Fact]
    public void Characters_that_share_an_outline_are_copied_out_each_as_itself()
    {
        const string label = "Δ∆ Ω\u2126 µμ a\u00A0b";
        var review = SampleReviews.Middle();
        using var document = Drawn.Open(Drawn.Write(review with { Rider = review.Rider with { Label = label } }));

        Assert.StartsWith(label, string.Concat(document.GetPage(2).Letters.Select(letter => letter.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_language_is_set()
    {
        using var document = Drawn.Open("middle", Paper.A4);

        Assert.True(document.Structure.Catalog.CatalogDictionary.TryGet(NameToken.Lang, out var language));
        Assert.Equal("en-GB", ((StringToken)language).Data);
    }

    [Fact]
    public void The_identifier_comes_from_the_content()
    {
        string one = Identifier(Drawn.Pdf("middle", Paper.A4)), other = Identifier(Drawn.Pdf("low", Paper.A4));

        Assert.Equal(32, one.Length);
        Assert.NotEqual(one, other);
        Assert.Equal(one, Identifier(Drawn.Write(Drawn.Sample("middle"))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_outline_leads_to_the_page_of_each_section(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        DocumentBookmarkNode[] nodes = [.. bookmarks!.GetNodes().Cast<DocumentBookmarkNode>()];

        Assert.Equal("The week", nodes[0].Title);
        foreach (var section in Drawn.Sample(name).Rides.IsEmpty ? Array.Empty<string>() : ["The rides", "Sources", "The method"])
        {
            DocumentBookmarkNode node = Assert.Single(nodes, node => node.Title == section);
            Assert.Contains(section, Drawn.TextOf(document.GetPage(node.PageNumber)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_link_leads_to_a_place_that_exists(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        var places = Places(document);

        string[] targets = [.. document.GetPages().SelectMany(Targets)];
        Assert.Equal(Drawn.HasLinks(Drawn.Sample(name)), targets.Length > 0);
        Assert.All(targets, target => Assert.True(places.Data.ContainsKey(target), $"{target} is not a place of the document."));
    }

    [Fact]
    public void A_finding_links_to_the_strips_of_its_rides_and_page_one_to_the_finding()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        string[] first = [.. Targets(document.GetPage(1))], second = [.. Targets(document.GetPage(2))];

        Assert.Equal(["rule-hard-day-spacing", "rule-long-ride", "rule-endurance-volume"], first);
        Assert.All(second, target => Assert.StartsWith("ride-", target, StringComparison.Ordinal));
        Assert.Contains("Tue 9 June 18:05, high", Drawn.TextOf(document.GetPage(PageOf(document, "ride-1"))), StringComparison.Ordinal);
        Assert.Contains("Hard day spacing", Drawn.TextOf(document.GetPage(PageOf(document, "rule-hard-day-spacing"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Fonts_are_embedded_subset_and_Inter_alone_where_Inter_has_every_glyph()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        string[] fonts = [.. document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.FontName!).Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(2, fonts.Length);
        Assert.All(fonts, font => Assert.Matches("^[A-Z]{6}\\+Inter-(Regular|SemiBold)$", font));
        Assert.True(Drawn.Pdf("no-rides", Paper.A4).Length < 120_000);
    }

    [Fact]
    public void Charts_are_vectors()
    {
        using var document = Drawn.Open("high", Paper.A4);

        Assert.All(document.GetPages(), page => Assert.Empty(page.GetImages()));
        Assert.Contains(document.GetPages(), page => page.Paths.Count > 150);
    }

    private static string Identifier(byte[] pdf)
    {
        var text = System.Text.Encoding.Latin1.GetString(pdf);
        var at = text.LastIndexOf("/ID [<", StringComparison.Ordinal) + 6;
        return text[at..text.IndexOf('>', at)];
    }

    private static IEnumerable<string> Targets(Page page) => page.GetAnnotations()
        .Where(annotation => annotation.Type == AnnotationType.Link)
        .Select(annotation => ((NameToken)annotation.AnnotationDictionary.Data["Dest"]).Data);

    private static DictionaryToken Places(PdfDocument document)
    {
        var reference = (IndirectReferenceToken)document.Structure.Catalog.CatalogDictionary.Data["Dests"];
        return (DictionaryToken)document.Structure.GetObject(reference.Data).Data;
    }

    private static int PageOf(PdfDocument document, string place)
    {
        var page = (IndirectReferenceToken)((ArrayToken)Places(document).Data[place]).Data[0];
        var pages = (IndirectReferenceToken)document.Structure.Catalog.CatalogDictionary.Data["Pages"];
        return Leaves(document, pages).ToList().FindIndex(leaf => leaf.Data.Equals(page.Data)) + 1;
    }

    private static IEnumerable<IndirectReferenceToken> Leaves(PdfDocument document, IndirectReferenceToken node)
    {
        var dictionary = (DictionaryToken)document.Structure.GetObject(node.Data).Data;
        return dictionary.Data.TryGetValue("Kids", out var kids)
            ? ((ArrayToken)kids).Data.Cast<IndirectReferenceToken>().SelectMany(kid => Leaves(document, kid))
            : [node];
    }
}
