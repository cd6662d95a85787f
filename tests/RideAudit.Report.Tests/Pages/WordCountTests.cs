namespace RideAudit.Report.Tests.Pages;

/// <summary>A review is shared when it is short.</summary>
public sealed class WordCountTests
{
    private const int FewestPages = 3;
    private const int MostWords = 900;
    private const int MostWordsOfAny = 1400;

    [Fact]
    public void The_median_of_the_worked_weeks_is_three_pages_and_under_nine_hundred_words()
    {
        (string Name, int Pages, int Words)[] counted =
        [
            .. RealReviews.Names.Select(Count),
        ];
        var told = string.Join('\n', counted.Select(one => $"{one.Name}: {one.Pages} pages, {one.Words} words"));

        Assert.True(Median(counted.Select(one => one.Pages)) == FewestPages, told);
        Assert.True(Median(counted.Select(one => one.Words)) < MostWords, told);
        Assert.True(counted.All(one => one.Pages <= FewestPages && one.Words < MostWordsOfAny), told);
    }

    private static int Median(IEnumerable<int> values)
    {
        int[] ordered = [.. values.Order()];
        return ordered[ordered.Length / 2];
    }

    // A word is what white space parts: figures, units and axis labels count as words.
    private static (string Name, int Pages, int Words) Count(string name)
    {
        using var document = Drawn.Open(RealReviews.Pdf(name));
        return (name, document.NumberOfPages, document.GetPages().Sum(page => Drawn.TextOf(page).Split(' ').Length));
    }
}
