using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Roster;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Tokens;

namespace RideAudit.Report.Tests.Roster;

public sealed class RosterPdfTests
{
    public static IEnumerable<object[]> Everything => Drawn.EveryRoster;

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_letter_stands_inside_the_margins_and_none_over_another(string name, Paper paper)
    {
        using var document = Open(SampleRosters.All[name](), paper);
        foreach (var page in document.GetPages())
        {
            Assert.Equal([], Placement.Outside(page).Take(3));
            Assert.Equal([], Placement.Overlaps(page.Letters).Take(3));
        }
    }

    [Theory]
    [InlineData("one")]
    [InlineData("forty")]
    [InlineData("every-state")]
    public void Every_rider_has_a_row_of_marks_and_a_row_of_words_in_the_documents_order(string name)
    {
        var roster = SampleRosters.All[name]();
        using var document = Open(roster);
        List<string> lines = [.. document.GetPages().SelectMany(Drawn.Lines)];
        var told = lines.FindIndex(line => line == "Rider by rider");
        int matrix = -1, row = told;

        for (var i = 0; i < roster.Riders.Length; i++)
        {
            var rider = roster.Riders[i];
            var starts = $"{i + 1} {Formatting.Words.Of(rider.Need)} {rider.Label}";
            Assert.InRange(lines.FindIndex(matrix + 1, line => line.StartsWith(starts, StringComparison.Ordinal)), matrix + 1, told - 1);
            matrix = lines.FindIndex(matrix + 1, line => line.StartsWith(starts, StringComparison.Ordinal));
            row = lines.FindIndex(row + 1, line => line.StartsWith(starts, StringComparison.Ordinal));
            Assert.True(row > told, rider.Label);
            Assert.Contains(lines.Skip(row + 1).Take(3), line => line.Contains(Drawn.Plain(rider.Why)[..18], StringComparison.Ordinal));
            Assert.All(rider.Facts, fact => Assert.Contains(lines.Skip(row + 1).Take(12), line => line.Contains(Drawn.Plain(fact)[..12], StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void The_matrix_names_every_rule_over_its_column_and_draws_a_mark_for_every_verdict()
    {
        var roster = SampleRosters.EveryState();
        var page = new PageRecord(FontSet.OfThisMachine);
        var matrix = new RosterMatrix(roster, FontSet.OfThisMachine, 480);
        matrix.Heads.Draw(page, 0, 0);
        var centres = roster.Riders[0].Verdicts.Select(verdict => page.Texts.Single(text => text.Text == verdict.Name).Right - 2).ToArray();
        Assert.Equal(centres.Order(), centres);

        var place = 0;
        foreach (var row in matrix.Rows())
        {
            page = new PageRecord(FontSet.OfThisMachine);
            row.Draw(page, 0, 0);
            var rider = roster.Riders[place++];
            for (var rule = 0; rule < centres.Length; rule++)
            {
                var drawn = page.Strokes.Count(stroke => stroke.Pen.Width > 0.9f && Math.Abs(stroke.Middle - centres[rule]) < 3);
                var expected = rider.Verdicts.IsEmpty ? 0 : rider.Verdicts[rule].Verdict == Rules.Verdict.Broken ? 2 : 1;
                Assert.True(drawn == expected, $"{rider.Label}, column {rule}: {drawn} strokes");
            }
        }
    }

    [Fact]
    public void Riders_who_share_a_finding_are_named_together()
    {
        var roster = SampleRosters.EveryState();
        using var document = Open(roster);
        var text = string.Join(' ', document.GetPages().Select(Drawn.TextOf));

        Assert.NotEmpty(roster.Shared);
        Assert.All(roster.Shared, shared => Assert.Contains(
            $"{Formatting.Words.Of(shared.Verdict)} {shared.Name} {Formatting.Shown.List(shared.Riders.Select(folder => roster.Riders.First(rider => rider.Folder == folder).Label))}.",
            text, StringComparison.Ordinal));
    }

    [Fact]
    public void Four_weeks_of_a_rider_are_drawn_to_one_scale_a_block_a_ridden_day()
    {
        var rider = SampleRosters.EveryState().Riders[0];
        var page = new PageRecord(FontSet.OfThisMachine);
        new SmallLine(rider.Weeks).Draw(page, 0, 0);
        SmallWeek.Day[] filled = [.. rider.Weeks.SelectMany(week => week.Days).Where(day => day is { Hours: > 0, Stress: not null })];

        Assert.Equal(filled.Length, page.Shapes.Count);
        var perHour = page.Shapes.Zip(filled, (shape, day) => (shape.Right - shape.Left) / day.Hours).ToArray();
        Assert.All(perHour, width => Assert.Equal(perHour[0], width, 3));
        var perShare = page.Shapes.Zip(filled, (shape, day) => (shape.Bottom - shape.Top) / (day.Stress!.Value / day.Hours)).ToArray();
        Assert.All(perShare, height => Assert.Equal(perShare[0], height, 3));
        Assert.Equal(rider.Weeks.Select(week => Formatting.Shown.ShortDate(week.StartsOn)), page.Texts.Select(text => text.Text));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(40, 7)]
    [InlineData(90, 14)]
    public void Riders_flow_on_as_many_pages_as_they_need(int riders, int pages)
    {
        using var document = Open(SampleRosters.Of(riders));

        Assert.InRange(document.NumberOfPages, 1, pages);
        foreach (var page in document.GetPages())
        {
            var text = Drawn.TextOf(page);
            Assert.Contains($"{page.Number} of {document.NumberOfPages}", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_counts_at_the_top_are_the_documents()
    {
        var roster = SampleRosters.Of(40);
        var text = Top(roster);
        int Needing(RosterNeed need) => roster.Riders.Count(rider => rider.Need == need);

        Assert.Contains("40 riders who needs you first at the top", text, StringComparison.Ordinal);
        Assert.Contains("Week of 15 June 2026, as of 22 June 2026", text, StringComparison.Ordinal);
        Assert.Contains($"{Needing(RosterNeed.Broken)} of 40 riders broke a rule; {Needing(RosterNeed.NoReview)} have no review.", text, StringComparison.Ordinal);
        Assert.Contains($"{Needing(RosterNeed.Watch)} to watch, {Needing(RosterNeed.Kept)} kept every rule that could be judged.", text, StringComparison.Ordinal);
        Assert.Contains($"{roster.Riders.Count(rider => rider.FilesNotUsed > 0)} riders have files that could not be used.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "No riders.")]
    [InlineData(1, "The one rider broke a rule.")]
    [InlineData(12, "2 of 12 riders broke a rule; 1 has no review.")]
    public void The_headline_reads_right_for_few_riders(int riders, string headline) =>
        Assert.Contains(headline, Top(SampleRosters.Of(riders)), StringComparison.Ordinal);

    [Fact]
    public void A_roster_without_a_broken_rule_says_so()
    {
        var roster = SampleRosters.Of(12);
        var calm = roster with { Riders = [.. roster.Riders.Where(rider => rider.Need is RosterNeed.Watch or RosterNeed.Kept)] };

        Assert.Contains("None of 9 riders broke a rule.", Top(calm), StringComparison.Ordinal);
    }

    [Fact]
    public void The_cautions_stand_at_the_foot_of_the_first_page()
    {
        var text = Top(SampleRosters.Of(40));

        Assert.All(Cautions.All, caution => Assert.Contains(caution, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Labels_are_never_cut()
    {
        var roster = SampleRosters.LongLabels();
        for (var i = 0; i < roster.Riders.Length; i++)
        {
            var rider = roster.Riders[i];
            var row = new RosterRow(roster, i, FontSet.OfThisMachine, 480);
            var shown = string.Concat(row.Label.Select(line => line.Text));

            Assert.StartsWith(Bare(FontSet.OfThisMachine.Printable(rider.Label, Weight.SemiBold)), Bare(shown), StringComparison.Ordinal);
            Assert.EndsWith(Bare(FontSet.OfThisMachine.Printable(rider.ReviewFile ?? rider.Label, Weight.Regular)), Bare(shown), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Reviews_of_different_weeks_are_not_put_under_one_week()
    {
        var text = Top(SampleRosters.LongLabels());

        Assert.DoesNotContain("Week of", text, StringComparison.Ordinal);
        Assert.Contains("As of 22 June 2026", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("forty")]
    [InlineData("long-labels")]
    public void Each_label_leads_to_the_riders_review_beside_the_overview(string name)
    {
        var roster = SampleRosters.All[name]();
        using var document = Open(roster);
        string[] links = [.. document.GetPages().SelectMany(page => page.GetAnnotations()).Where(note => note.Type == AnnotationType.Link && note.AnnotationDictionary.Data.ContainsKey("A")).Select(Address).Distinct()];

        Assert.Equal(roster.Riders.Where(rider => rider.ReviewFile is not null).Select(rider => rider.ReviewFile!).Order(StringComparer.Ordinal), links.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_outline_leads_to_each_group()
    {
        using var document = Open(SampleRosters.Of(40));
        Assert.True(document.TryGetBookmarks(out var bookmarks));

        Assert.Equal(["Broken", "No review", "Watch", "Kept", "Told together", "Rider by rider"], bookmarks!.GetNodes().Select(node => node.Title));
    }

    [Fact]
    public void Two_runs_write_the_same_bytes() => Assert.Equal(Write(SampleRosters.LongLabels(), Paper.A4), Write(SampleRosters.LongLabels(), Paper.A4));

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Address(Annotation link)
    {
        var action = (DictionaryToken)link.AnnotationDictionary.Data["A"];
        return Uri.UnescapeDataString(((StringToken)action.Data["URI"]).Data);
    }

    private static string Top(RosterDocument roster)
    {
        using var document = Open(roster);
        return Drawn.TextOf(document.GetPage(1));
    }

    private static PdfDocument Open(RosterDocument roster, Paper paper = Paper.A4) => Drawn.Open(Write(roster, paper));

    private static byte[] Write(RosterDocument roster, Paper paper)
    {
        using var stream = new MemoryStream();
        RosterPdf.Write(roster, stream, new PageOptions { Paper = paper });
        return stream.ToArray();
    }
}
