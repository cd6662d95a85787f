using NodaTime;
using RideAudit.Document.Json;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;
using RideAudit.Report.Text;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;
using Span = RideAudit.Report.Text.Span;

namespace RideAudit.Report.Tests.Pages;

/// <summary>What once stood wrong on a page does not come back.</summary>
public sealed class DefectTests
{
    public static IEnumerable<object[]> Names => SampleReviews.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Unknown_stress_is_a_dash_and_never_called_nothing(string name)
    {
        var text = Drawn.Whole(name);

        Assert.DoesNotContain("no stress", Page(name, 1), StringComparison.Ordinal);
        Assert.DoesNotContain("0 stress", text, StringComparison.Ordinal);
        Assert.Equal(Drawn.Sample(name).Rides.Any(ride => ride.Stress is null), Page(name, 1).Contains("stress unknown", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_is_written_into_a_chart_but_figures_and_weeks(string name) =>
        Assert.DoesNotContain("settled from here", Drawn.Whole(name), StringComparison.Ordinal);

    [Fact]
    public void A_text_is_cut_between_words_where_it_has_any()
    {
        var fonts = FontSet.OfThisMachine;
        const string text = "Three hard days in the week, asked at most two. Common practice, no source.";

        for (float width = 60; width < 300; width += 7)
        {
            var cut = LineBreaker.Clip(fonts, new Span(text, Styles.Body), width, 1)[0].Text;
            Assert.EndsWith("…", cut, StringComparison.Ordinal);
            var kept = cut.TrimEnd('…');
            Assert.StartsWith(kept, text, StringComparison.Ordinal);
            Assert.False(char.IsLetter(text[kept.Length]), $"'{cut}' is cut inside a word.");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_last_page_holds_nothing_but_cautions(string name)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        var last = Drawn.TextOf(document.GetPage(document.NumberOfPages));

        Assert.True(document.NumberOfPages == 1 || last.Contains("The method", StringComparison.Ordinal));
        Assert.Equal(1, document.GetPages().Count(page => Drawn.TextOf(page).Contains("see a doctor", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_short_history_fills_its_chart_from_the_left()
    {
        var history = HistoryMaker.Make(new ReviewSpec { HistoryWeeks = 3 }, []);
        var area = new Area(0, 0, 480, 90);
        var plot = new WeekPlot(new NoSurface(), area, history, new Scale(0, 10, 5));

        Assert.InRange(plot.At(0, 0).X, area.Left + 20, area.Left + 70);
        Assert.InRange(plot.At(2, 0).X - plot.At(1, 0).X, 30, 60);
    }

    [Fact]
    public void A_range_that_is_none_is_told_as_one_figure()
    {
        var middle = SampleReviews.Middle();
        var flat = middle with { History = [.. middle.History.Select(week => week with { Stress = 236.2, LongestRideSeconds = 3600 })] };
        using var document = Drawn.Open(Drawn.Write(flat, appendix: true));
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));

        Assert.Contains("This week 236 points, as in every week shown.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("From 236 ", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.04, "Chronic load stayed at 43")]
    [InlineData(-0.04, "Chronic load stayed at 43")]
    [InlineData(0.06, "Chronic load rose by 0.1 points to 43")]
    [InlineData(-2.06, "Chronic load fell by 2.1 points to 43")]
    public void A_ramp_that_rounds_to_nothing_is_no_rise(double ramp, string words)
    {
        var middle = SampleReviews.Middle();
        using var document = Drawn.Open(Drawn.Write(middle with { Week = middle.Week with { RampPerWeek = ramp, ChronicLoad = 43.2 } }));

        Assert.Contains(words, Drawn.TextOf(document.GetPage(2)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_recovery_day_whose_ride_is_called_otherwise_says_that_it_means_the_day()
    {
        var middle = SampleReviews.Middle();
        var friday = middle.Week.Days.ToList().FindIndex(day => day.Date.DayOfWeek == IsoDayOfWeek.Friday);
        Assert.Equal(RideKind.Endurance, middle.Rides.Single(ride => middle.Week.Days[friday].Rides.Contains(ride.File)).Kind);
        var eased = middle with { Week = middle.Week with { Days = middle.Week.Days.SetItem(friday, middle.Week.Days[friday] with { Kind = DayKind.Recovery }) } };
        using var document = Drawn.Open(Drawn.Write(eased));

        Assert.Contains("recovery day", Drawn.TextOf(document.GetPage(1)), StringComparison.Ordinal);
        Assert.Contains("Recovery day: one short easy ride.", Drawn.TextOf(document.GetPage(3)), StringComparison.Ordinal);
    }

    [Fact]
    public void Common_practice_is_said_once_and_marked_elsewhere()
    {
        using var document = Drawn.Open("middle", Paper.A4);
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));

        Assert.Equal(2, text.Split("common practice, no source", StringSplitOptions.None).Length);
        Assert.True(text.Count(letter => letter == '°') > 3);
    }

    [Fact]
    public void A_change_is_drawn_clear_of_the_days_labels()
    {
        var middle = SampleReviews.Middle();
        RideChange[][] changes =
        [
            [new(ChangeKind.Move, middle.Rides[1].File, new(2026, 6, 10), new(2026, 6, 11), null)],
            [new(ChangeKind.Swap, middle.Rides[0].File, new(2026, 6, 9), new(2026, 6, 12), null), new(ChangeKind.Swap, middle.Rides[2].File, new(2026, 6, 12), new(2026, 6, 9), null)],
            [new(ChangeKind.Move, middle.Rides[3].File, new(2026, 6, 14), new(2026, 6, 12), null)],
        ];
        foreach (var change in changes)
        {
            var review = middle with { SmallestChange = new SmallestChange([.. change], [], "Otherwise.") };
            foreach (var block in new Block[] { new SpacingLine(review, FontSet.OfThisMachine, 493, 200), new CardLine(review, FontSet.OfThisMachine, 472, 13) })
            {
                var page = new PageRecord(FontSet.OfThisMachine);
                block.Draw(page, 0, 0);
                var arrows = page.Strokes.Where(stroke => stroke.Pen.Width is > 1.05f and < 1.15f && stroke.Pen.Dash == 0).ToArray();
                Assert.NotEmpty(arrows);
                foreach (var text in page.Texts.Where(text => text.Text.All(char.IsAsciiDigit) && text.Text.Length is 2 or 3))
                    Assert.DoesNotContain(arrows, arrow => arrow.Pieces.Any(piece => Crosses(piece, text)));
            }
        }
    }

    [Fact]
    public void A_review_ends_with_more_than_its_sources_and_takes_three_pages_where_closer_rides_allow_it()
    {
        using var document = Drawn.Open(RealReviews.Pdf("stage-event"));
        Assert.Equal(3, document.NumberOfPages);
        foreach (var name in SampleReviews.All.Keys)
        {
            using var sample = Drawn.Open(name, Drawn.PaperOf(name));
            var last = sample.GetPage(sample.NumberOfPages);
            Assert.True(sample.NumberOfPages == 1 || Drawn.Lines(last).Skip(1).First() is not ("Sources" or "The method"), name);
        }
    }

    [Fact]
    public void A_reason_told_for_the_rule_above_is_not_left_blank()
    {
        using var document = Drawn.Open(RealReviews.Pdf("stage-event"));
        var page = Drawn.TextOf(document.GetPage(2));

        Assert.Equal(2, page.Split("not judged: the week holds an event", StringSplitOptions.None).Length);
        Assert.Equal(RealReviews.Of("stage-event").Findings.Count(f => f.Reason == "the week holds an event") - 1, page.Split("as above", StringSplitOptions.None).Length - 1);
    }

    [Fact]
    public void What_was_not_measured_is_told_in_a_line_and_draws_no_empty_chart_and_no_column_of_dashes()
    {
        using var document = Drawn.Open(RealReviews.Pdf("heart-rate-only"));
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));

        Assert.Contains("Drift on long rides: nothing measured yet. Bests by six weeks: nothing measured yet.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("norm. W", text, StringComparison.Ordinal);
        Assert.DoesNotContain("not measured;", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_without_rides_explains_no_blocks_and_splits_nothing()
    {
        var page = Page("no-rides", 1);

        Assert.DoesNotContain("Intensity split", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Width: time", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_smallest_change_is_told_in_full_once_on_page_two()
    {
        var middle = SampleReviews.Middle();
        var change = middle.SmallestChange!.Sentence;
        var both = middle with { Findings = [.. middle.Findings.Select(f => f.Verdict == Verdict.Broken ? f with { WouldHaveKept = change } : f)] };
        using var document = Drawn.Open(Drawn.Write(both));
        var page = Drawn.TextOf(document.GetPage(2));

        Assert.Equal(2, page.Split(Drawn.Plain(change), StringSplitOptions.None).Length);
        Assert.Equal(both.Findings.Count(f => f.Verdict == Verdict.Broken) - 1, page.Split("Would have kept it: the same change.", StringSplitOptions.None).Length - 1);
    }

    [Fact]
    public void A_limit_reads_as_words_and_not_as_its_name()
    {
        var review = RealReviews.Of("demo");
        using var document = Drawn.Open(RealReviews.Pdf("demo", appendix: true));
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));
        var limits = review.Findings.SelectMany(f => f.Limits).ToArray();

        Assert.True(limits.Length > 20);
        foreach (var limit in limits)
        {
            Assert.Contains(Drawn.Plain(limit.Text), text, StringComparison.Ordinal);
            Assert.DoesNotContain($"{limit.Name.Replace('_', ' ')}:", text, StringComparison.Ordinal);
            Assert.DoesNotMatch("_|^(?!at )[a-z]+ (least|most) [0-9]", limit.Text);
        }
    }

    [Theory]
    [InlineData("demo")]
    [InlineData("mixed")]
    [InlineData("commuter")]
    [InlineData("stage-event")]
    public void Spelling_is_British_and_a_length_of_time_has_one_form(string name)
    {
        using var document = Drawn.Open(RealReviews.Pdf(name, appendix: true));
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));
        var said = ReviewJson.Write(RealReviews.Of(name)).Replace("\\u00A0", " ", StringComparison.Ordinal);

        Assert.DoesNotMatch("(?i)\\b(normalized|colors?|centers?|gray|favor|behavior|labeled|analyzed?)\\b", text);
        Assert.DoesNotMatch("[0-9] h [0-9]+(?![0-9]| min)", said);
        Assert.DoesNotMatch("[0-9](h|min)\\b|[0-9] (hours|hrs|minutes|mins)\\b", said);
    }

    [Fact]
    public void A_tolerance_is_in_points_and_a_share_in_per_cent() => Assert.Contains("intended 75 % low ± 7 points", Page("middle", 1), StringComparison.Ordinal);

    [Fact]
    public void The_note_is_headed_as_the_coachs() => Assert.Contains("From the coach", Page("noted", 1), StringComparison.Ordinal);

    private static string Page(string name, int number)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        return Drawn.TextOf(document.GetPage(number));
    }

    private static bool Crosses((Point From, Point To) piece, (string Text, float Left, float Right, float Baseline, float Size) text)
    {
        float top = text.Baseline - (0.73f * text.Size) - 1, foot = text.Baseline + 1;
        return Math.Max(piece.From.X, piece.To.X) > text.Left - 1 && Math.Min(piece.From.X, piece.To.X) < text.Right + 1
            && Math.Max(piece.From.Y, piece.To.Y) > top && Math.Min(piece.From.Y, piece.To.Y) < foot;
    }

    /// <summary>Nothing is drawn.</summary>
    private sealed class NoSurface() : TextSizes([]);
}
