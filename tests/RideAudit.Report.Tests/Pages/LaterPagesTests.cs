using System.Globalization;
using System.Text.RegularExpressions;
using RideAudit.Rules;
using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests.Pages;

public sealed class LaterPagesTests
{
    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_rule_is_in_the_appendix_with_its_verdict_sentence_and_source(string name)
    {
        var review = Drawn.Sample(name);
        var text = Drawn.Whole(name);

        foreach (var finding in review.Findings)
        {
            Assert.Contains(Drawn.Plain(finding.Sentence), text, StringComparison.Ordinal);
            Assert.Contains(finding.Source.TrimEnd('.'), text, StringComparison.OrdinalIgnoreCase);
            if (finding.Reason is { } reason)
                Assert.Contains(reason, text, StringComparison.Ordinal);
        }

        var broken = review.Findings.Count(finding => finding.Verdict == Verdict.Broken);
        Assert.Contains($"{broken} broken, ", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_ride_has_a_row_with_the_documents_figures(string name)
    {
        var review = Drawn.Sample(name);
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        string[] lines = [.. document.GetPages().SelectMany(Drawn.Lines)];

        foreach (var ride in review.Rides)
        {
            var start = $"{ride.StartsAt.ToString("ddd d HH:mm", CultureInfo.InvariantCulture)} {Formatting.Words.Of(ride.Kind)} ";
            var row = Assert.Single(lines, line => line.StartsWith(start, StringComparison.Ordinal));
            Assert.Contains(Shown(ride.Stress, "F0"), row, StringComparison.Ordinal);
            AssertShown(row, ride.NormalisedPowerW, "F0", review.Rides.Any(other => other.NormalisedPowerW is not null));
            AssertShown(row, ride.IntensityRatio, "F2", review.Rides.Any(other => other.IntensityRatio is not null));
            AssertShown(row, ride.MeanHeartRateBpm, "F0", review.Rides.Any(other => other.MeanHeartRateBpm is not null));
        }
    }

    // A column that no ride of the week has is left out.
    private static void AssertShown(string row, double? value, string format, bool hasColumn)
    {
        if (hasColumn)
            Assert.Contains(Shown(value, format), row, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Pages_are_numbered_from_the_first_to_the_last(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));

        foreach (var page in document.GetPages())
            Assert.Contains($"{page.Number} of {document.NumberOfPages}", Drawn.TextOf(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-rides", 1)]
    [InlineData("low", 3)]
    [InlineData("middle", 3)]
    [InlineData("letter", 3)]
    [InlineData("heart-rate-only", 3)]
    [InlineData("high", 3)]
    [InlineData("very-high", 3)]
    [InlineData("event", 3)]
    public void An_ordinary_week_takes_three_pages_and_one_without_rides_one(string name, int pages)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));

        Assert.Equal(pages, document.NumberOfPages);
    }

    [Fact]
    public void Every_notice_is_named_and_the_tables_head_is_on_each_of_its_pages()
    {
        var review = Drawn.Sample("long-notices");
        using var document = Drawn.Open(Drawn.Write(review, appendix: true));
        Page[] pages = [.. document.GetPages().Where(page => Drawn.TextOf(page).Contains("The file ends in the middle", StringComparison.Ordinal))];

        Assert.True(pages.Length > 2);
        Assert.All(pages, page => Assert.Contains("file problem what was done", Drawn.TextOf(page), StringComparison.Ordinal));
        var told = pages.Sum(page => Drawn.Lines(page).Count(line => line.Contains("The file ends in the middle", StringComparison.Ordinal)));
        Assert.Equal(review.Notices.Length, told);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_heading_is_the_last_thing_on_its_page(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));

        foreach (var page in document.GetPages().Skip(1))
        {
            var lowest = page.Letters.Where(letter => letter.StartBaseLine.Y > Drawn.Margin + 8).Min(letter => letter.StartBaseLine.Y);
            Assert.All(page.Letters.Where(letter => letter.PointSize >= 11), letter => Assert.True(letter.StartBaseLine.Y > lowest + 5));
        }
    }

    [Fact]
    public void The_charts_are_told_in_words_in_the_appendix()
    {
        var text = Drawn.Whole("middle");

        Assert.Contains("Between hard rides: Tue 9 to Wed 10 22.9 h (broken)", text, StringComparison.Ordinal);
        Assert.Contains("Split by time: 73 % low", text, StringComparison.Ordinal);
        Assert.Contains("Training stress a week, points. From", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Threshold_power_is_shown_with_its_second_opinions_and_the_efforts_behind_them()
    {
        var thresholds = Drawn.Sample("event").Thresholds!;
        var text = Drawn.Whole("event");

        Assert.Contains(thresholds.Sentence, text, StringComparison.Ordinal);
        Assert.Contains("In force: 240 W from 6 January 2026 (rider file), 250 W from 28 April 2026 (rider file).", text, StringComparison.Ordinal);
        Assert.Contains("Critical power 241 W with 14.6 kJ above it", text, StringComparison.Ordinal);
        foreach (var effort in thresholds.CriticalPowerEfforts)
        {
            var power = $"{effort.Seconds / 60} min {Shown(effort.MeanPowerW, "F0")} W on {effort.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}: ";
            Assert.Contains(Bare(power + effort.File), Bare(text), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_review_without_thresholds_says_nothing_of_them() => Assert.DoesNotContain("In force:", All("middle"), StringComparison.Ordinal);

    [Fact]
    public void Weeks_out_of_the_ordinary_are_lettered_and_what_was_not_riding_is_told()
    {
        using var document = Drawn.Open("event", Paper.A4);
        var first = Drawn.TextOf(document.GetPage(1));
        var trend = document.GetPages().First(page => Drawn.TextOf(page).Contains("L lighter, E event, A away.", StringComparison.Ordinal));
        var small = trend.GetWords().Where(word => Math.Abs(word.Letters[0].PointSize - 7.5) < 0.01 && word.Letters[0].Color!.ToRGBValues().r < 0.2);
        string[] letters = [.. small.Where(word => Regex.IsMatch(word.Text, "^[LEA](\u00A0|$)")).OrderBy(word => word.BoundingBox.Left).Select(word => word.Text[..1])];

        Assert.Equal(["L", "L", "L", "E", "A", "A", "E"], letters);
        Assert.Contains("other 0.8 h", first, StringComparison.Ordinal);
        Assert.Contains("other 1.5 h", first, StringComparison.Ordinal);
        Assert.Contains(", event", Drawn.Lines(document.GetPage(1)).First(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_week_of_history_is_told_and_not_charted()
    {
        var text = All("new-rider");

        Assert.Contains("There is one week of rides so far", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Ramp: the week", text, StringComparison.Ordinal);
    }

    private static string Shown(double? value, string format) =>
        value is { } known ? Math.Round(known, format == "F2" ? 2 : 0, MidpointRounding.AwayFromZero).ToString(format, CultureInfo.InvariantCulture) : "–";

    private static string Bare(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static string All(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        return string.Join(' ', document.GetPages().Select(Drawn.TextOf));
    }
}
