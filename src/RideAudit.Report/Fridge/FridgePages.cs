using RideAudit.Document.Layouts;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Pages;
using RideAudit.Report.Text;

namespace RideAudit.Report.Fridge;

/// <summary>Weeks to come set on pages: several weeks at a glance first, then a page each, and the cautions on every one.</summary>
internal sealed class FridgePages : IPages
{
    private const float OverFooter = 8;
    private const float UnderHead = 10;
    private const float DeepestPicture = 250;
    private static readonly TextStyle HeadlineStyle = new(Weight.SemiBold, 22, Palette.Ink);
    private readonly NextDocument _document;
    private readonly FontSet _fonts;
    private readonly CautionFooter _footer;
    private readonly WeekScale _scale;
    private readonly List<(Block Head, string? Place, List<Placed> Blocks)> _pages = [];
    private readonly List<OutlineLine> _outline = [];

    public FridgePages(NextDocument document, PageOptions options, FontSet fonts)
    {
        (_document, _fonts) = (document, fonts);
        Sheet = new Sheet(options.Paper);
        _footer = new CautionFooter(document.Cautions, fonts, Sheet.ContentWidth);
        _scale = OpenScale.Of(document);
        if (document.Weeks.Length > 1)
        {
            var head = FridgeHead.Of(document, fonts, Sheet.ContentWidth);
            Set(head, "The programme", "programme", [.. Programme(Bottom - Top(head))]);
        }
        for (var i = 0; i < document.Weeks.Length; i++)
            SetWeek(document.Weeks[i], i == document.Weeks.Length - 1);
    }

    /// <inheritdoc/>
    public Sheet Sheet { get; }

    /// <inheritdoc/>
    public int Count => _pages.Count;

    /// <inheritdoc/>
    public IEnumerable<OutlineLine> Outline => _outline;

    private float Top(Block head) => Sheet.Top + head.Height + UnderHead;

    private float Bottom => Sheet.Bottom - _footer.Height - OverFooter;

    /// <inheritdoc/>
    public void Draw(int page, Surface surface)
    {
        var (head, place, blocks) = _pages[page];
        if (place is not null)
            surface.Anchor(Sheet.Left, Sheet.Top, place);
        head.Draw(surface, Sheet.Left, Sheet.Top);
        foreach (var (block, y) in blocks)
            block.Draw(surface, Sheet.Left, y);
        _footer.Draw(surface, Sheet.Left, Sheet.Bottom - _footer.Height);
        if (Count > 1)
            surface.Text($"{Shown.Number(page + 1)} of {Shown.Number(Count)}", Styles.Tiny, Sheet.Right, Sheet.Bottom - Styles.PageNumberBaseline, Align.End);
    }

    private static string Ridden(NextWeekEntry week) => week.Days.Any(d => d.RiddenMinutes > 0) ? OpenKey.Ridden : "";

    private static string PlaceOf(NextWeekEntry week) => $"week-{Shown.Iso(week.StartsOn)}";

    private List<Block> Programme(float room)
    {
        var weeks = _document.Weeks;
        Block[] above =
        [
            Headline($"{Shown.Capital(Shown.Count(weeks.Length, "week"))}, {Shown.Hours(weeks.Min(w => w.Hours))} to {Shown.Hours(weeks.Max(w => w.Hours))} each"),
            new GapBlock(4),
            Small(OpenKey.Text + Ridden(weeks[0]) + " Each week has its own page."),
            new GapBlock(6),
        ];
        var each = (room - above.Sum(b => b.Height)) / weeks.Length;
        return [.. above, .. weeks.Select(w => new ProgrammeRow(w, _scale, _fonts, Sheet.ContentWidth, each) { Target = PlaceOf(w) })];
    }

    // The largest setting that keeps the week on one page; what room is left goes to the picture.
    private void SetWeek(NextWeekEntry week, bool isLast)
    {
        var head = FridgeHead.Of(_document, week, _fonts, Sheet.ContentWidth);
        var room = Bottom - Top(head);
        foreach (var density in FridgeDensity.LargestFirst)
        {
            var spare = room - Week(week, density, density.Picture, isLast).Sum(b => b.Height);
            if (spare < 0 && density != FridgeDensity.LargestFirst[^1])
                continue;
            var picture = Math.Clamp(density.Picture + spare, density.Picture, DeepestPicture);
            Set(head, Shown.Capital($"week of {Shown.FullDate(week.StartsOn)}"), PlaceOf(week), [.. Week(week, density, picture, isLast)]);
            return;
        }
    }

    private IEnumerable<Block> Week(NextWeekEntry week, FridgeDensity density, float picture, bool isLast)
    {
        var width = Sheet.ContentWidth;
        yield return Headline(ToComeWords.Headline(week));
        yield return new TextBlock(_fonts, ToComeWords.Sums(week) + ".", Styles.Quiet, width);
        yield return new GapBlock(8);
        yield return new OpenWeek(week, _scale, width, picture, isSmall: false);
        yield return new GapBlock(4);
        yield return Small(OpenKey.Text + Ridden(week));
        yield return new GapBlock(8);
        foreach (var day in week.Days)
        {
            for (var i = 0; i < Math.Max(1, day.Sessions.Length); i++)
                yield return new SessionRow(day, i, density, _fonts, width);
        }
        yield return new HairlineBlock(width, 8);
        foreach (var note in Notes(week, isLast))
            yield return new TextBlock(_fonts, note, Styles.SmallInk, width);
    }

    private IEnumerable<string> Notes(NextWeekEntry week, bool isLast)
    {
        if (week.Days.Any(d => d.Sessions.Any(s => ToComeWords.Range(s) is not null)))
            yield return "Small under a length: how much shorter or longer the ride may be.";
        foreach (var note in week.Notes)
            yield return note;
        if (week.GaveWay is { } gave)
            yield return gave.Sentence;
        if (ToComeWords.Judged(week) is { } judged)
            yield return judged;
        if (!isLast)
            yield break;
        foreach (var note in _document.Notes)
            yield return note;
    }

    private TextLines Headline(string text) => new(LineBreaker.Balance(_fonts, new Span(text, HeadlineStyle), Sheet.ContentWidth));

    private TextBlock Small(string text) => new(_fonts, text, Styles.Small, Sheet.ContentWidth);

    private void Set(Block head, string title, string place, List<Block> blocks)
    {
        var y = float.MaxValue;
        _outline.Add(new OutlineLine(title, place));
        foreach (var block in blocks)
        {
            if (y + block.Height > Bottom)
            {
                _pages.Add((head, y == float.MaxValue ? place : null, []));
                y = Top(head);
            }
            _pages[^1].Blocks.Add(new Placed(block, y));
            y += block.Height;
        }
    }
}
