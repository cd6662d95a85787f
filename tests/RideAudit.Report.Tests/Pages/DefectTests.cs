using NodaTime;
using RideAudit.Report.Charts;
using RideAudit.Report.Drawing;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;
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
    public void A_tolerance_is_in_points_and_a_share_in_per_cent() => Assert.Contains("intended 75 % low ± 7 points", Page("middle", 1), StringComparison.Ordinal);

    [Fact]
    public void The_note_is_headed_as_the_coachs() => Assert.Contains("From the coach", Page("noted", 1), StringComparison.Ordinal);

    private static string Page(string name, int number)
    {
        using var document = Drawn.Open(name, Drawn.PaperOf(name));
        return Drawn.TextOf(document.GetPage(number));
    }

    /// <summary>Nothing is drawn.</summary>
    private sealed class NoSurface() : TextSizes([]);
}
