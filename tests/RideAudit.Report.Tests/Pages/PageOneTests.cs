using System.Globalization;
using RideAudit.Rules;

namespace RideAudit.Report.Tests.Pages;

public sealed class PageOneTests
{
    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Key_figures_are_the_documents(string name)
    {
        var review = Drawn.Sample(name);
        var text = PageOne(name);

        Assert.Contains(Tenth(review.Week.Hours) + " h", text, StringComparison.Ordinal);
        Assert.Contains(Whole(review.Week.Stress), text, StringComparison.Ordinal);
        Assert.Contains(Tenth(Math.Abs(review.Week.RampPerWeek)), text, StringComparison.Ordinal);
        Assert.Contains("load " + (review.Week.SettlingIn ? "" : "now ") + Whole(review.Week.ChronicLoad), text, StringComparison.Ordinal);
        if (review.Week.SplitByTime is { } split)
        {
            Assert.Contains($"{Whole(split.Low * 100)} % low", text, StringComparison.Ordinal);
            Assert.Contains($"{Whole(split.Middle * 100)} % middle", text, StringComparison.Ordinal);
            Assert.Contains($"{Whole(split.High * 100)} % high", text, StringComparison.Ordinal);
        }
    }

    public static IEnumerable<object[]> NamesWithRoom => SampleReviews.Names.Where(name => name[0] is not "crowded");

    [Theory]
    [MemberData(nameof(NamesWithRoom))]
    public void Headline_subline_actions_and_what_held_are_the_documents(string name)
    {
        var review = Drawn.Sample(name);
        var text = PageOne(name);

        Assert.Contains(Drawn.Plain(review.Summary.Headline), text, StringComparison.Ordinal);
        Assert.Contains(Drawn.Plain(review.Summary.Subline), text, StringComparison.Ordinal);
        Assert.All(review.Summary.ToChange, advice => Assert.Contains(advice.Title, text, StringComparison.Ordinal));
        Assert.All(review.Summary.Held, held => Assert.Contains(held, text, StringComparison.Ordinal));
        Assert.All(review.Summary.Cautions, caution => Assert.Contains(caution, text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_to_change_is_never_cut_and_what_held_is_counted_where_there_is_no_room()
    {
        var review = Drawn.Sample("crowded");
        var text = PageOne("crowded");

        Assert.Contains(Drawn.Plain(review.Summary.Headline), text, StringComparison.Ordinal);
        Assert.All(review.Summary.ToChange, advice => Assert.Contains(Drawn.Plain(advice.Title), text, StringComparison.Ordinal));
        Assert.Matches("what held, number 1 .* · [0-9]+ more", text);
        Assert.All(review.Summary.Cautions, caution => Assert.Contains(caution, text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(NamesWithRoom))]
    public void Why_a_rule_is_broken_stands_on_page_two_and_is_not_said_before(string name)
    {
        var review = Drawn.Sample(name);
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        var first = Drawn.TextOf(document.GetPage(1));
        var rest = string.Join(' ', document.GetPages().Skip(1).Select(Drawn.TextOf));

        foreach (var finding in review.Findings.Where(finding => finding.Verdict is Verdict.Broken or Verdict.Watch && !review.Rides.IsEmpty))
        {
            Assert.Contains(Drawn.Plain(finding.Sentence), rest, StringComparison.Ordinal);
            Assert.DoesNotContain(Drawn.Plain(finding.Sentence), first, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Who_which_week_and_where_in_the_plan_stand_at_the_top()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        var top = Drawn.Lines(document.GetPage(1)).First();

        Assert.Equal("Rider A middle volume Week of 8 June 2026, ISO week 24, week 10 of 16", top);
    }

    [Fact]
    public void Each_days_stress_stands_over_its_day()
    {
        var review = Drawn.Sample("middle");
        using var document = Drawn.Open("middle", Paper.A4);
        UglyToad.PdfPig.Content.Word[] words = [.. document.GetPage(1).GetWords()];

        foreach (var day in review.Week.Days.Where(day => day.Stress is not null))
        {
            var date = day.Date.ToString("ddd", CultureInfo.InvariantCulture);
            string[] spellings = [date, date + " " + day.Date.Day, date + "\u00A0" + day.Date.Day];
            var name = words.First(word => spellings.Contains(word.Text));
            var stress = Whole(day.Stress!.Value);
            Assert.Contains(words, word => word.Text == stress && word.BoundingBox.Bottom > name.BoundingBox.Top && Math.Abs(word.BoundingBox.Left - name.BoundingBox.Left) < 25);
        }
    }

    [Fact]
    public void A_broken_span_is_labelled_with_its_hours_in_rust()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        UglyToad.PdfPig.Content.Letter[] rust = [.. document.GetPage(1).Letters.Where(letter => IsRust(letter.Color))];

        Assert.StartsWith("23", string.Concat(rust.Select(letter => letter.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_stands_under_the_verdict_and_goes_on_where_there_is_no_more_room()
    {
        var note = string.Join("\n\n", Enumerable.Range(1, 40).Select(number => $"Paragraph {number} of a *long* note to **the rider**."));
        using var document = Drawn.Open(Drawn.Write(SampleReviews.Middle() with { Note = note }));
        string first = Drawn.TextOf(document.GetPage(1)), rest = string.Concat(document.GetPages().Skip(1).Select(Drawn.TextOf));

        Assert.Contains("Paragraph 1 of a long note to the rider.", first, StringComparison.Ordinal);
        Assert.Contains("The note goes on overleaf.", first, StringComparison.Ordinal);
        Assert.Contains("The coach’s note, continued", rest, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(1, 40), number => Assert.Contains($"Paragraph {number} of", first + rest, StringComparison.Ordinal));
    }

    [Fact]
    public void Room_for_notes_is_left_only_when_asked_for_and_there_is_no_note()
    {
        using var asked = Drawn.Open(Drawn.Write(SampleReviews.Low(), roomForNotes: true));
        using var noted = Drawn.Open(Drawn.Write(SampleReviews.Low() with { Note = "Well ridden." }, roomForNotes: true));
        using var plain = Drawn.Open(Drawn.Write(SampleReviews.Low()));

        Assert.Contains(Drawn.Lines(asked.GetPage(1)), line => line == "Notes");
        Assert.DoesNotContain(Drawn.Lines(noted.GetPage(1)), line => line == "Notes");
        Assert.DoesNotContain(Drawn.Lines(plain.GetPage(1)), line => line == "Notes");
    }

    [Fact]
    public void A_label_too_long_for_the_page_is_cut_with_an_ellipsis()
    {
        var text = PageOne("noted");

        Assert.Contains("…", text, StringComparison.Ordinal);
        Assert.StartsWith("A rider whose label", text, StringComparison.Ordinal);
    }

    private static string PageOne(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        return Drawn.TextOf(document.GetPage(1));
    }

    private static string Tenth(double value) => Math.Round(value, 1, MidpointRounding.AwayFromZero).ToString("F1", CultureInfo.InvariantCulture);

    private static string Whole(double value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString("F0", CultureInfo.InvariantCulture);

    private static bool IsRust(UglyToad.PdfPig.Graphics.Colors.IColor? colour)
    {
        if (colour is null)
            return false;
        (var red, var green, var blue) = colour.ToRGBValues();
        return Math.Abs(red - (0xA8 / 255.0)) < 0.01 && Math.Abs(green - (0x4A / 255.0)) < 0.01 && Math.Abs(blue - (0x1C / 255.0)) < 0.01;
    }
}
