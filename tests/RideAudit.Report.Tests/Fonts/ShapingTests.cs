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
        byte[] bytes = InterPackage.Read(file);
        Face face = Face.Open(bytes)!;
        GlyphRun run = face.Shape(text, face.UnitsPerEm);
        List<(int Glyph, int X)> expected = Reference(bytes, face.UnitsPerEm, text, out int width);

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
    public void An_accent_of_its_own_stands_on_its_letter(string parts, string whole)
    {
        GlyphRun run = Assert.Single(Bare.Shape(parts, Weight.Regular, 10));

        Assert.Equal(2, run.Glyphs.Count);
        Assert.Equal(Styles.Body.Measure(Bare, whole), Styles.Body.Measure(Bare, parts), 1);
        Assert.True(run.Glyphs[1].X < run.Width);
    }

    private static List<(int Glyph, int X)> Reference(byte[] bytes, int unitsPerEm, string text, out int width)
    {
        GCHandle pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        using var blob = new Blob(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.ReadOnly);
        using var face = new HarfBuzzSharp.Face(blob, 0);
        using var font = new Font(face);
        font.SetScale(unitsPerEm, unitsPerEm);
        font.SetFunctionsOpenType();
        using var buffer = new Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        font.Shape(buffer, [Feature.Parse("kern=1"), Feature.Parse("liga=0"), Feature.Parse("clig=0"), Feature.Parse("calt=0"), Feature.Parse("tnum=1")]);
        var glyphs = new List<(int Glyph, int X)>();
        int x = 0;
        for (int i = 0; i < buffer.Length; i++)
        {
            glyphs.Add(((int)buffer.GlyphInfos[i].Codepoint, x + buffer.GlyphPositions[i].XOffset));
            x += buffer.GlyphPositions[i].XAdvance;
        }

        pinned.Free();
        width = x;
        return glyphs;
    }
}
