using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pages;
using RideAudit.Report.Tests.Samples;
using SkiaSharp;

namespace RideAudit.Report.Tests.Fonts;

public sealed class FontTests
{
    private static readonly FontSet Bare = new(new SystemFonts([]));

    [Fact]
    public void The_package_holds_the_weights_in_use()
    {
        Assert.Equal("Inter-Regular", FontSet.Inter(Weight.Regular).Name);
        Assert.Equal("Inter-SemiBold", FontSet.Inter(Weight.SemiBold).Name);
        Assert.Throws<InvalidDataException>(() => InterPackage.Read("Inter-Imaginary.ttf"));
    }

    [Theory]
    [InlineData("Latin", "Zoë Ångström-Łukasiewicz naïve Dvořák şğı ÆŒß ‘’“”–—…±×·•")]
    [InlineData("Greek", "Αθλήτρια Β, ομάδα Θεσσαλονίκης ΐΰϊϋ")]
    [InlineData("Cyrillic", "Гонщик Я, Київ, Ђорђе, щука, Ўзбек")]
    public void Inter_carries_the_script(string script, string text)
    {
        Assert.Empty(Bare.Lacking([text]));
        Assert.Equal(text, Bare.Printable(text, Weight.SemiBold));
        Assert.All(Bare.Shape(text, Weight.Regular, 10), run => Assert.True(run.Face == FontSet.Inter(Weight.Regular), script));
    }

    [Fact]
    public void A_font_that_is_given_draws_what_was_lacking_before_and_what_is_none_is_refused()
    {
        var machine = new SystemFonts([]);
        var fonts = new FontSet(machine);
        Assert.Equal("[Chinese or Japanese]", fonts.Printable("乗り手", Weight.Regular));
        Assert.False(machine.Add([]));
        Assert.False(machine.Add([.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 7))]));
        Assert.True(machine.Add(MadeFont.Bytes("乗り手")));
        Assert.Equal("乗り手", fonts.Printable("乗り手", Weight.Regular));
        Assert.Empty(fonts.Lacking(["乗り手"]));
    }

    /// <summary>The browser's tests drop it on the page.</summary>
    [Fact]
    public void The_made_font_of_the_test_data_is_as_it_is_made()
    {
        var path = Path.Combine(Repository.Root, "testdata", "fonts", "made.ttf");
        if (Repository.Updates)
            File.WriteAllBytes(path, MadeFont.Bytes("乗り手"));
        Assert.Equal(MadeFont.Bytes("乗り手"), File.ReadAllBytes(path));
    }

    [Theory]
    [InlineData("Rider あい", "Rider [Chinese or Japanese]", "IPAexGothic")]
    [InlineData("Rider 김", "Rider [Korean]", "Nanum Gothic")]
    [InlineData("🚴", "[emoji]", "Noto Emoji")]
    [InlineData("選手 二番 A", "[Chinese or Japanese] A", "IPAexGothic")]
    public void A_script_no_font_has_is_named_in_its_place_with_a_font_to_install(string text, string printed, string font)
    {
        Assert.Equal(printed, Bare.Printable(text, Weight.Regular));
        var lacking = Assert.Single(Bare.Lacking([text]));
        Assert.Contains($"for example {font}", lacking.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("فارس", "[Arabic]")]
    [InlineData("רוכב", "[Hebrew]")]
    [InlineData("सवार", "[Indic]")]
    [InlineData("นักปั่น", "[Thai]")]
    public void A_script_whose_letters_join_or_move_is_not_drawn_wrongly_even_where_a_font_has_it(string text, string printed)
    {
        Assert.Equal(printed, FontSet.OfThisMachine.Printable(text, Weight.Regular));
        Assert.Contains("is not set by this program", Assert.Single(FontSet.OfThisMachine.Lacking([text])).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void What_could_not_be_drawn_is_named_on_the_page_and_told_among_the_notices()
    {
        using var stream = new MemoryStream();
        ReviewPdf.Write(SampleReviews.Middle() with { Rider = SampleReviews.Middle().Rider with { Label = "Rider あ" } }, stream, new PageOptions(), Bare);
        using var document = Drawn.Open(stream.ToArray());

        Assert.StartsWith("Rider [Chinese or Japanese]", Drawn.TextOf(document.GetPage(1)), StringComparison.Ordinal);
        Assert.Contains(document.GetPages().Select(Drawn.TextOf), text => text.Contains("install one with TrueType outlines, for example IPAexGothic", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("middle")]
    [InlineData("greek")]
    [InlineData("japanese")]
    [InlineData("no-rides")]
    public void No_empty_box_is_drawn(string name)
    {
        var pages = new ReviewPages(Drawn.Sample(name), new PageOptions(), Bare);
        var glyphs = new List<int>();
        for (var page = 0; page < pages.Count; page++)
            pages.Draw(page, new Watched(glyphs));

        Assert.NotEmpty(glyphs);
        Assert.DoesNotContain(0, glyphs);
    }

    [Fact]
    public void Control_characters_are_not_drawn() => Assert.Equal("a bc", Bare.Printable("a\nb\u0007c\u200B", Weight.Regular));

    [Fact]
    public void Half_a_character_is_not_drawn() => Assert.DoesNotContain('\uD800', Bare.Printable("a\uD800b", Weight.Regular));

    [Fact]
    public void A_cut_down_font_keeps_the_outlines_of_what_is_drawn_and_drops_the_rest()
    {
        var face = FontSet.Inter(Weight.Regular);
        int letter = face.Glyph('é'), figure = face.Glyph('1');
        var bytes = face.Cut([(letter, 'é'), (figure, '1')]);
        using SKTypeface cutTypeface = SKTypeface.FromData(SKData.CreateCopy(bytes)), wholeTypeface = SKTypeface.FromData(SKData.CreateCopy(face.Bytes));
        using SKFont cut = new(cutTypeface, 100), whole = new(wholeTypeface, 100);

        Assert.Equal(1, cut.GetGlyph('é'));
        Assert.Equal(2, cut.GetGlyph('1'));
        Assert.Equal(0, cut.GetGlyph('W'));
        Assert.Equal(whole.GetGlyphPath((ushort)letter)!.Bounds, cut.GetGlyphPath(1)!.Bounds);
        Assert.Equal(whole.GetGlyphWidths([(ushort)figure])[0], cut.GetGlyphWidths([2])[0]);
        Assert.True(bytes.Length < face.Bytes.Length / 8, $"{bytes.Length} of {face.Bytes.Length} bytes");
    }

    [Fact]
    public void A_machines_fonts_are_asked_only_for_what_Inter_lacks()
    {
        Assert.Same(FontSet.Inter(Weight.Regular), FontSet.OfThisMachine.For(Weight.Regular, "a"));
        Assert.Null(new SystemFonts(["/no/such/folder"]).For("あ"));
    }

    [Fact]
    public void A_damaged_font_gives_no_exception()
    {
        var whole = InterPackage.Read("Inter-Regular.ttf");
        var random = new Random(20260622);
        for (var round = 0; round < 60; round++)
        {
            var damaged = whole[..random.Next(whole.Length)];
            for (var i = 0; i < 200 && damaged.Length > 0; i++)
                damaged[random.Next(Math.Min(damaged.Length, round % 2 == 0 ? 4096 : damaged.Length))] = (byte)random.Next(256);
            var face = Face.Open(damaged);
            var run = face?.Shape("Αθλήτρια Beta 123 e\u0301 Щ", 10);
            Assert.True(face is null || face.Cut([.. run!.Glyphs.Select(glyph => (glyph.Id, glyph.CodePoint))]).Length > 0);
        }
    }

    private sealed class Watched(List<int> glyphs) : Surface(Bare)
    {
        public override void Clipped(Area area, Action draw) => draw();

        public override void Link(Area area, string target)
        {
        }

        public override void LinkOut(Area area, string address)
        {
        }

        public override void Anchor(float x, float y, string name)
        {
        }

        protected override void Glyphs(GlyphRun run, TextStyle style, float x, float baseline) => glyphs.AddRange(run.Glyphs.Select(glyph => glyph.Id));

        protected override void Stroke(IReadOnlyList<Point[]> pieces, Pen pen)
        {
        }

        protected override void Polygon(Point[] corners, Colour colour)
        {
        }
    }
}
