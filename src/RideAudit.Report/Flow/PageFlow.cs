namespace RideAudit.Report.Flow;

/// <summary>Sets blocks one under another on as many pages as they need.</summary>
/// <param name="sheet">The paper.</param>
internal sealed class PageFlow(Sheet sheet)
{
    private readonly List<List<Placed>> pages = [];
    private readonly List<Block> waiting = [];
    private float y = float.MaxValue;

    /// <summary>Where the first page's flow begins, pt.</summary>
    public float FirstTop { get; init; } = sheet.FlowTop;

    /// <summary>Where the first page's flow ends, pt.</summary>
    public float FirstBottom { get; init; } = sheet.FlowBottom;

    private float Bottom => pages.Count == 1 ? FirstBottom : sheet.FlowBottom;

    /// <summary>Adds a block after those added before.</summary>
    public void Add(Block block)
    {
        waiting.Add(block);
        if (!block.KeepWithNext)
            Place();
    }

    /// <summary>Adds several.</summary>
    public void Add(IEnumerable<Block> blocks)
    {
        foreach (Block block in blocks)
            Add(block);
    }

    /// <summary>What comes next begins a page, unless what came before took more than one.</summary>
    public void BeginPageTwo()
    {
        Place();
        if (pages.Count == 1)
            y = float.MaxValue;
    }

    /// <summary>Blocks have room on the first page under what stands there.</summary>
    public bool HasRoomOnFirst(List<Block> blocks)
    {
        Place();
        return pages.Count == 1 && y + Depth(blocks) <= Bottom;
    }

    /// <summary>What comes next begins a page.</summary>
    public void BeginPage()
    {
        Place();
        if (pages.Count > 0)
            y = float.MaxValue;
    }

    /// <summary>The pages, first to last.</summary>
    public IReadOnlyList<IReadOnlyList<Placed>> Finish()
    {
        Place();
        return pages;
    }

    private void Place()
    {
        if (waiting.Count == 0)
            return;
        if (pages.Count == 0 || y + Depth(waiting) > Bottom)
            TurnPage();
        foreach (Block block in waiting)
        {
            bool first = pages[^1].Count == 0;
            if (!first && y + block.SpaceBefore + block.Height > Bottom)
            {
                TurnPage();
                first = true;
            }

            Set(block, first);
        }

        waiting.Clear();
    }

    private void Set(Block block, bool first)
    {
        if (first && block.RunningHead is { } head)
        {
            pages[^1].Add(new Placed(head, y));
            y += head.Height;
        }

        y += first ? 0 : block.SpaceBefore;
        pages[^1].Add(new Placed(block, y));
        y += block.Height;
    }

    private void TurnPage()
    {
        if (pages.Count > 0 && pages[^1].Count == 0)
            return;
        pages.Add([]);
        y = pages.Count == 1 ? FirstTop : sheet.FlowTop;
    }

    private static float Depth(List<Block> blocks) => blocks.Sum(block => block.SpaceBefore + block.Height);
}
