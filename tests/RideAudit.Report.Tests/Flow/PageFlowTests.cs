using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;

namespace RideAudit.Report.Tests.Flow;

public sealed class PageFlowTests
{
    private static readonly Sheet A4 = new(Paper.A4);

    [Fact]
    public void Margins_are_18_mm_on_both_papers()
    {
        foreach (var sheet in new[] { A4, new Sheet(Paper.Letter) })
        {
            Assert.Equal(51.024, sheet.Left, 0.001);
            Assert.Equal(sheet.Width - 51.024, sheet.Right, 0.001);
            Assert.True(sheet.FlowTop > sheet.Top && sheet.FlowBottom < sheet.Bottom);
        }
    }

    [Fact]
    public void A_block_that_does_not_fit_starts_the_next_page()
    {
        var pages = Flow(new Slab(A4.FlowHeight - 50), new Slab(60));

        Assert.Equal([1, 1], pages.Select(page => page.Count));
        Assert.Equal(A4.FlowTop, pages[1][0].Y);
    }

    [Fact]
    public void A_heading_goes_with_what_it_heads()
    {
        var pages = Flow(new Slab(A4.FlowHeight - 70), new Slab(20) { KeepWithNext = true }, new Slab(60));

        Assert.Equal([1, 2], pages.Select(page => page.Count));
    }

    [Fact]
    public void White_space_above_is_dropped_at_the_top_of_a_page()
    {
        var pages = Flow(new Slab(A4.FlowHeight - 10), new Slab(20) { SpaceBefore = 30 });

        Assert.Equal(A4.FlowTop, pages[1][0].Y);
    }

    [Fact]
    public void A_tables_head_is_repeated_on_its_later_pages()
    {
        var head = new Slab(15);
        Block[] rows = [.. Enumerable.Range(0, 100).Select(_ => new Slab(20) { RunningHead = head })];
        var pages = Flow([head, .. rows]);

        Assert.True(pages.Count > 2);
        Assert.All(pages, page => Assert.Same(head, page[0].Block));
        Assert.Equal(100 + pages.Count, pages.Sum(page => page.Count));
    }

    [Fact]
    public void Nothing_stands_below_the_flow()
    {
        Block[] blocks = [.. Enumerable.Range(1, 200).Select(number => new Slab(7 + (number % 37)) { SpaceBefore = number % 5, KeepWithNext = number % 3 == 0 })];
        var pages = Flow(blocks);

        Assert.All(pages.SelectMany(page => page), placed => Assert.True(placed.Y + placed.Block.Height <= A4.FlowBottom + 0.01));
        Assert.Equal(blocks, pages.SelectMany(page => page).Select(placed => placed.Block));
    }

    [Fact]
    public void A_chain_longer_than_a_page_is_still_set()
    {
        Block[] chain = [.. Enumerable.Range(0, 80).Select(_ => new Slab(20) { KeepWithNext = true })];

        Assert.Equal(80, Flow(chain).Sum(page => page.Count));
    }

    private static IReadOnlyList<IReadOnlyList<Placed>> Flow(params Block[] blocks)
    {
        var flow = new PageFlow(A4);
        flow.Add(blocks);
        return flow.Finish();
    }

    private sealed class Slab(float height) : Block
    {
        public override float Height => height;

        public override void Draw(Surface surface, float x, float y)
        {
        }
    }
}
