using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Tests.Samples;
using RideAudit.Report.Text;
using SkiaSharp;
using UglyToad.PdfPig;

namespace RideAudit.Report.Tests.Fonts;

public sealed class FontTests
{
    private static readonly FontSet Bare = new(new SystemFonts([]));

    [Fact]
    public void The_package_holds_the_weights_in_use()
    {
        Assert.Equal("Inter", Bare.Inter(Weight.Regular).Typeface.FamilyName);
        Assert.StartsWith("Inter", Bare.Inter(Weight.SemiBold).Typeface.FamilyName, StringComparison.Ordinal);
        Assert.Throws<InvalidDataException>(() => InterPackage.Read("Inter-Imaginary.ttf"));
    }

    [Theory]
    [InlineData("1111111111")]
    [InlineData("8088408840")]
    public void Digits_are_all_of_one_width(string digits) =>
        Assert.Equal(Shaper.Measure(Bare, "0000000000", Styles.Body), Shaper.Measure(Bare, digits, Styles.Body), 3);

    [Fact]
    public void Inters_own_digits_are_not_of_one_width_so_the_map_was_changed()
    {
        using SKTypeface plain = SKTypeface.FromData(SKData.CreateCopy(InterPackage.Read("Inter-Regular.ttf")));
        using var font = new SKFont(plain, 10);

        Assert.NotEqual(font.MeasureText("0000000000"), font.MeasureText("1111111111"), 1f);
    }

    [Fact]
    public void A_character_no_font_has_is_printed_as_its_code_point()
    {
        Assert.Equal("Rider U+3042 U+3044", Shaper.Printable(Bare, "Rider あい", Weight.Regular).TrimEnd());
        Assert.Equal("U+1F6B4", Shaper.Printable(Bare, "🚴", Weight.Regular).Trim());
    }

    [Fact]
    public void On_a_machine_without_fonts_the_code_points_stand_on_the_page()
    {
        using var stream = new MemoryStream();
        ReviewPdf.Write(SampleReviews.Middle() with { Rider = SampleReviews.Middle().Rider with { Label = "Rider あ" } }, stream, new PageOptions(), Bare);
        using PdfDocument document = Drawn.Open(stream.ToArray());

        Assert.StartsWith("Rider U+3042", Drawn.TextOf(document.GetPage(1)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("middle")]
    [InlineData("greek")]
    [InlineData("japanese")]
    [InlineData("no-rides")]
    public void No_empty_box_is_drawn(string name)
    {
        var pages = new RideAudit.Report.Pages.ReviewPages(Drawn.Sample(name), new PageOptions(), Bare, Samples.RideMaker.TracesOf(Drawn.Sample(name)));
        var ledger = new GlyphLedger();
        using var recorder = new SKPictureRecorder();
        var ink = new Ink(recorder.BeginRecording(new SKRect(0, 0, 600, 850)), Bare, ledger);
        for (int page = 0; page < pages.Count; page++)
            pages.Draw(page, ink);

        Assert.All(ledger.Drawn, face => Assert.DoesNotContain((ushort)0, face.Value));
    }

    [Fact]
    public void Greek_is_in_Inter_itself() => Assert.Same(Bare.Inter(Weight.SemiBold), Bare.For(Weight.SemiBold, "ή"));

    [Fact]
    public void Control_characters_are_not_drawn() => Assert.Equal("a bc", Shaper.Printable(Bare, "a\nb\u0007c\u200B", Weight.Regular));

    [Fact]
    public void A_cut_down_font_keeps_the_outlines_of_what_is_drawn_and_drops_the_rest()
    {
        Face face = Bare.Inter(Weight.Regular);
        using var whole = new SKFont(face.Typeface, 100);
        ushort kept = whole.GetGlyph('é'), dropped = whole.GetGlyph('W');
        byte[] bytes = FontSubset.Make(face.Tables, [kept])!;
        using SKTypeface typeface = SKTypeface.FromData(SKData.CreateCopy(bytes));
        using var cut = new SKFont(typeface, 100);

        Assert.Equal(whole.GetGlyphPath(kept)!.Bounds, cut.GetGlyphPath(kept)!.Bounds);
        Assert.Equal(kept, cut.GetGlyph('é'));
        Assert.Equal(0, cut.GetGlyph('W'));
        Assert.True(cut.GetGlyphPath(dropped) is null or { IsEmpty: true });
        Assert.True(bytes.Length < face.Tables.Bytes.Length / 4);
    }

    [Fact]
    public void A_machines_fonts_are_asked_only_for_what_Inter_lacks()
    {
        Assert.Same(FontSet.OfThisMachine.Inter(Weight.Regular), FontSet.OfThisMachine.For(Weight.Regular, "a"));
        Assert.Null(new SystemFonts(["/no/such/folder"]).For("あ"));
    }
}
