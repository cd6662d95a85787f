using System.Runtime.InteropServices;
using HarfBuzzSharp;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using Buffer = HarfBuzzSharp.Buffer;
using Face = RideAudit.Report.Fonts.Face;

namespace RideAudit.Report.Tests.Fonts;

/// <summary>Text set in managed code against HarfBuzz, which most browsers and systems set text with: glyphs and positions to a unit of the font.</summary>
public sealed class ShapingTests
{
    private static readonly FontSet Bare = new(new SystemFonts([]));

    private static readonly string[] Texts =
    [
        "AVATAR To Ty Wa. “Yes,” f’T L’Avion 7.4 LT P. r, v. (Av)", "Week of 8 June 2026, ISO week 24, week 10 of 16",
        "Two hard rides 22.9 h apart; the plan asks 40 h between hard days.", "+12.7 −3.1 ±5 points · 73 % low – 1 h 05 min…",
        "Zoë Ångström, Łódź, Dvořák, İzmir, Åre, Æsir, ÀÁÂÃÄÅ ÇÈÉÊ Ťažký Ľ", "Αθλήτρια Β, ομάδα Θεσσαλονίκης. ΤΟ ΑΥΤΟ Γ. Ρ, ΤΑ Υψ",
        "Гонщик Я, Київ. ГДА Ту Рус. Ђорђе Ўзбек УДА Тр", "rider-2026_06_22/old rides/Tuesday.fit #1 [50%] {a} <b> a@b \\ ~ ^ | `", "fi fl ff ffi -> => 1x1 10:30 (A) 1/2",
    ];

    public static IEnumerable<object[]> Cases => Texts.SelectMany(text => new[] { "Inter-Regular.ttf", "Inter-SemiBold.ttf" }.Select(file => new object[] { file, text }));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Glyphs_and_kerning_are_those_of_HarfBuzz(string file, string text)
    {
        var bytes = InterPackage.Read(file);
        var face = Face.Open(bytes)!;
        var run = face.Shape(text, face.UnitsPerEm);
        var expected = Reference(bytes, face.UnitsPerEm, text, out var width);

        Assert.Equal(expected.Select(glyph => glyph.Glyph), run.Glyphs.Select(glyph => glyph.Id));
        Assert.Equal(expected.Select(glyph => glyph.X), run.Glyphs.Select(glyph => (int)MathF.Round(glyph.X)));
        Assert.Equal(width, (int)MathF.Round(run.Width));
    }

    [Fact]
    public void Some_pairs_are_kerned_and_some_are_not()
    {
        float Extra(string pair) => Styles.Body.Measure(Bare, pair) - pair.Sum(letter => Styles.Body.Measure(Bare, letter.ToString()));

        Assert.True(Extra("AV") < -0.2f);
        Assert.Equal(0, Extra("HH"), 4);
    }

    [Theory]
    [InlineData("1111111111")]
    [InlineData("8088408840")]
    public void Digits_are_all_of_one_width(string digits) =>
        Assert.Equal(Styles.Body.Measure(Bare, "0000000000"), Styles.Body.Measure(Bare, digits), 3);

    [Theory]
    [InlineData("e\u0301", "é")]
    [InlineData("A\u030A", "Å")]
    [InlineData("и\u0306", "й")]
    [InlineData("η\u0301", "ή")]
    public void A_letter_and_an_accent_that_follow_each_other_are_one_character(string parts, string whole)
    {
        Assert.Equal(2, parts.Length);
        Assert.Equal(whole[0], Assert.Single(Assert.Single(Bare.Shape(parts, Weight.Regular, 10)).Glyphs).CodePoint);
    }

    [Fact]
    public void An_accent_that_makes_no_character_with_its_letter_takes_no_room() =>
        Assert.Equal(Styles.Body.Measure(Bare, "x"), Styles.Body.Measure(Bare, "x\u0301"), 3);

    // Tabular digits; Inter has tabular points and signs as well, which the pages leave alone.
    private static IEnumerable<Feature> Features(string text)
    {
        string[] plain = ["kern=1", "liga=0", "clig=0", "calt=0"];
        var digits = Enumerable.Range(0, text.Length).Where(at => char.IsAsciiDigit(text[at]));
        return [.. plain.Select(Feature.Parse), .. digits.Select(at => Feature.Parse($"tnum[{at}:{at + 1}]=1"))];
    }

    private static List<(int Glyph, int X)> Reference(byte[] bytes, int unitsPerEm, string text, out int width)
    {
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        using var blob = new Blob(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.ReadOnly);
        using var face = new HarfBuzzSharp.Face(blob, 0);
        using var font = new Font(face);
        font.SetScale(unitsPerEm, unitsPerEm);
        font.SetFunctionsOpenType();
        using var buffer = new Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        font.Shape(buffer, [.. Features(text)]);
        var glyphs = new List<(int Glyph, int X)>();
        var x = 0;
        for (var i = 0; i < buffer.Length; i++)
        {
            glyphs.Add(((int)buffer.GlyphInfos[i].Codepoint, x + buffer.GlyphPositions[i].XOffset));
            x += buffer.GlyphPositions[i].XAdvance;
        }

        pinned.Free();
        width = x;
        return glyphs;
    }
}
