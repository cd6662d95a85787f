using RideAudit.Document;
using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Plan;
using RideAudit.Raster;
using RideAudit.Report.Fonts;
using RideAudit.Report.Fridge;
using RideAudit.Report.Tests.Pictures;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests.Fridge;

public sealed class FridgePagesTests
{
    private static readonly FontSet Bare = new(new SystemFonts([]));

    public static IEnumerable<object[]> Everything =>
        SampleToCome.All.Keys.SelectMany(name => new[] { Paper.A4, Paper.Letter }.Select(paper => new object[] { name, paper }));

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_letter_stands_inside_the_margins_and_none_over_another(string name, Paper paper)
    {
        using var document = Open(SampleToCome.All[name](), paper);
        foreach (var page in document.GetPages())
        {
            Assert.Equal([], Placement.Outside(page).Take(3));
            Assert.Equal([], Placement.Overlaps(page.Letters).Take(3));
        }
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void The_cautions_stand_on_every_page_for_each_may_hang_alone(string name, Paper paper)
    {
        using var document = Open(SampleToCome.All[name](), paper);
        foreach (var page in document.GetPages())
            Assert.All(Cautions.All, caution => Assert.Contains(caution, Drawn.TextOf(page), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("week", Paper.A4, 1)]
    [InlineData("week", Paper.Letter, 1)]
    [InlineData("begun", Paper.Letter, 1)]
    [InlineData("event", Paper.Letter, 1)]
    [InlineData("nothing", Paper.A4, 1)]
    [InlineData("programme", Paper.A4, 18)]
    [InlineData("programme", Paper.Letter, 18)]
    public void A_week_is_one_page_and_a_programme_two_more_for_sixteen_weeks_at_a_glance(string name, Paper paper, int pages)
    {
        using var document = Open(SampleToCome.All[name](), paper);
        Assert.Equal(pages, document.NumberOfPages);
    }

    [Theory]
    [InlineData("week")]
    [InlineData("begun")]
    [InlineData("event")]
    [InlineData("crowded")]
    public void Each_session_has_its_day_kind_length_and_what_to_ride(string name)
    {
        var week = SampleToCome.All[name]().Weeks.Single();
        using var document = Open(SampleToCome.All[name]());
        var text = string.Join(' ', document.GetPages().Select(Text));
        foreach (var day in week.Days)
        {
            Assert.Contains(Plain($"{Shown.ShortDay(day.Date)} {(day.Sessions.IsEmpty ? ToComeWords.Day(day) : Formatting.Words.Of(day.Sessions[0].Kind))}"), text, StringComparison.Ordinal);
            foreach (var session in day.Sessions)
            {
                var length = session.Minutes > 0 ? $" {Shown.TableLength(session.Minutes * 60)}" : "";
                Assert.Contains(Plain($"{Formatting.Words.Of(session.Kind)}{length} {Shown.Capital(session.Session ?? "")}"), text, StringComparison.Ordinal);
                Assert.Equal(session.MinutesFrom != session.MinutesTo, ToComeWords.Range(session) is { } range && text.Contains(Plain(range), StringComparison.Ordinal));
            }
        }
        Assert.All(week.Notes, note => Assert.Contains(note[..40], text, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_of_a_long_session_or_note_is_cut_off()
    {
        using var document = Open(SampleToCome.All["crowded"]());
        var text = string.Join(' ', document.GetPages().Select(Text));
        // Seven sessions, two notes of the week, one of the document and the one that gave way, six times each.
        Assert.Equal(66, Times(text, "whoever reads it reads all of it."));
        Assert.Contains("Seven high days, where two are enough.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_week_of_a_programme_stands_in_the_glance_and_its_row_leads_to_its_page()
    {
        var programme = SampleToCome.All["programme"]();
        using var document = Open(programme);
        var glance = string.Join(' ', document.GetPages().Take(2).Select(Text));
        Assert.Equal(4, Times(glance, "lighter week"));
        Assert.All(programme.Weeks, week => Assert.Contains(Plain(Shown.ShortDate(week.StartsOn)), glance, StringComparison.Ordinal));
        for (var i = 0; i < programme.Weeks.Length; i++)
            Assert.Contains(Plain($"Week of {Shown.FullDate(programme.Weeks[i].StartsOn)}"), Text(document.GetPage(i + 3)), StringComparison.Ordinal);
        Assert.Equal(16, document.GetPages().Take(2).Sum(p => p.GetAnnotations().Count()));
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(17, bookmarks.GetNodes().Count());
    }

    [Theory]
    [InlineData("week", "Hard on Tuesday and Thursday, long on Saturday")]
    [InlineData("begun", "Hard on Thursday, long on Saturday")]
    [InlineData("event", "Event on Saturday")]
    [InlineData("nothing", "No riding")]
    public void The_headline_names_the_days_that_matter(string name, string headline) =>
        Assert.Equal(headline, ToComeWords.Headline(SampleToCome.All[name]().Weeks.Single()));

    [Fact]
    public void A_block_is_as_wide_as_its_time_and_its_area_is_its_stress()
    {
        var week = SampleToCome.All["week"]().Weeks.Single();
        var surface = new Outlines(Bare);
        new OpenWeek(week, OpenScale.Of(SampleToCome.All["week"]()), 490, 200, isSmall: false).Draw(surface, 0, 0);
        var sessions = week.Days.SelectMany(d => d.Sessions).ToList();
        Assert.Equal(sessions.Count, surface.Blocks.Count);
        var perHour = surface.Blocks[0].Width / (sessions[0].Minutes / 60.0);
        var perPoint = surface.Blocks[0].Width * surface.Blocks[0].Height / sessions[0].ExpectedStress!.Value;
        Assert.All(sessions.Zip(surface.Blocks), pair =>
        {
            Assert.Equal(perHour * pair.First.Minutes / 60, pair.Second.Width, 0.01);
            Assert.Equal(perPoint * pair.First.ExpectedStress!.Value, pair.Second.Width * pair.Second.Height, 0.5);
            Assert.Equal(PlannedKinds.IsHard(pair.First.Kind), pair.Second.IsStrong);
        });
        Assert.Empty(surface.Filled);
    }

    [Fact]
    public void The_same_weeks_give_the_same_bytes() => Assert.Equal(Write(SampleToCome.All["week"](), Paper.A4), Write(SampleToCome.All["week"](), Paper.A4));

    [Fact]
    public void Without_a_week_there_is_nothing_to_draw() =>
        Assert.Throws<ArgumentException>(() => Write(SampleToCome.All["week"]() with { Weeks = [] }, Paper.A4));

    [Theory]
    [InlineData("week", 1)]
    [InlineData("event", 1)]
    [InlineData("programme", 1)]
    public void A_page_looks_as_approved(string name, int page)
    {
        using var drawn = ReviewPicture.Draw(new FridgePages(SampleToCome.All[name](), new PageOptions(), Bare), page - 1, 0.5f, Bare);

        ApprovedPicture.Check(drawn, $"fridge-{name}-{page}");
    }

    private static PdfDocument Open(NextDocument document, Paper paper = Paper.A4) => Drawn.Open(Write(document, paper));

    private static byte[] Write(NextDocument document, Paper paper)
    {
        using var stream = new MemoryStream();
        NextPdf.Write(document, stream, new PageOptions { Paper = paper });
        return stream.ToArray();
    }

    private static string Text(Page page) => Drawn.TextOf(page);

    private static string Plain(string text) => Drawn.Plain(text);

    private static int Times(string text, string part) => text.Split(part).Length - 1;
}
