using System.Collections.Concurrent;
using RideAudit.Document;
using RideAudit.Units;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace RideAudit.Report.Tests;

/// <summary>Samples as drawn, read back with another library.</summary>
public static class Drawn
{
    /// <summary>18 mm in points.</summary>
    public const double Margin = 18 / 25.4 * 72;

    private static readonly ConcurrentDictionary<(string Name, Paper Paper), byte[]> Files = new();

    /// <summary>Every sample on both papers.</summary>
    public static IEnumerable<object[]> Everything =>
        SampleReviews.All.Keys.SelectMany(name => new[] { Paper.A4, Paper.Letter }.Select(paper => new object[] { name, paper }));

    /// <summary>Every sample roster on both papers.</summary>
    public static IEnumerable<object[]> EveryRoster =>
        SampleRosters.All.Keys.SelectMany(name => new[] { Paper.A4, Paper.Letter }.Select(paper => new object[] { name, paper }));

    /// <summary>The paper a sample is approved on.</summary>
    public static Paper PaperOf(string name) => name is "letter" or "twenty-one-rides" or "crowded" ? Paper.Letter : Paper.A4;

    public static ReviewDocument Sample(string name) => SampleReviews.All[name]();

    public static byte[] Pdf(string name, Paper paper) => Files.GetOrAdd((name, paper), key => Write(Sample(key.Name), key.Paper));

    public static byte[] Write(ReviewDocument review, Paper paper = Paper.A4, bool roomForNotes = false, bool appendix = false)
    {
        using var stream = new MemoryStream();
        ReviewPdf.Write(review, stream, new PageOptions { Paper = paper, RoomForNotes = roomForNotes, Appendix = appendix }, RideMaker.TracesOf(review));
        return stream.ToArray();
    }

    /// <summary>All text of a sample with its appendix.</summary>
    public static string Whole(string name)
    {
        using var document = Open(Write(Sample(name), PaperOf(name), appendix: true));
        return string.Join(' ', document.GetPages().Select(TextOf));
    }

    /// <summary>Something leads to a rule or to a strip: what is to change, and rows of hard and long rides.</summary>
    public static bool HasLinks(ReviewDocument review) =>
        !review.Rides.IsEmpty && (!review.Summary.ToChange.IsEmpty || review.Rides.Any(ride => ride.IsHard || ride.Kind == RideKind.Long));

    public static PdfDocument Open(byte[] pdf) => PdfDocument.Open(pdf, new ParsingOptions { UseLenientParsing = false });

    public static PdfDocument Open(string name, Paper paper) => Open(Pdf(name, paper));

    /// <summary>Text of a page, spaces of every kind and line ends as one space.</summary>
    public static string TextOf(Page page) => Plain(string.Join(' ', Lines(page)));

    /// <summary>Text with spaces of every kind as one space.</summary>
    public static string Plain(string text) => string.Join(' ', text.Split([' ', '\u00A0', '\n'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Lines of a page, top to bottom: letters of one baseline, left to right, a gap as a space.</summary>
    public static IEnumerable<string> Lines(Page page)
    {
        foreach (var line in page.Letters.GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 1)).OrderByDescending(line => line.Key))
        {
            var text = new System.Text.StringBuilder();
            Letter? before = null;
            foreach (var letter in line.OrderBy(letter => letter.StartBaseLine.X))
            {
                if (before is not null && letter.StartBaseLine.X - before.EndBaseLine.X > 1)
                    text.Append(' ');
                text.Append(letter.Value);
                before = letter;
            }

            yield return Plain(text.ToString());
        }
    }
}
