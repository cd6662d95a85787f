namespace RideAudit.Report.Flow;

/// <summary>Sets blocks one under another on as many pages as they need.</summary>
/// <param name="sheet">The paper.</param>
internal sealed class PageFlow(Sheet sheet)
{
    private readonly List<List<Placed>> _pages = [];
    private readonly List<Block> _waiting = [];
    private float _y = float.MaxValue;

    /// <summary>Where the first page's flow begins, pt.</summary>
    public float FirstTop { get; init; } = sheet.FlowTop;

    /// <summary>Where the first page's flow ends, pt.</summary>
    public float FirstBottom { get; init; } = sheet.FlowBottom;

    private float Bottom => _pages.Count == 1 ? FirstBottom : sheet.FlowBottom;

    /// <summary>Adds a block after those added before.</summary>
    public void Add(Block block)
    {
        _waiting.Add(block);
        if (!block.KeepWithNext)
            Place();
    }

    /// <summary>Adds several.</summary>
    public void Add(IEnumerable<Block> blocks)
    {
        foreach (var block in blocks)
            Add(block);
    }

    /// <summary>What comes next begins a page, unless what came before took more than one.</summary>
    public void BeginPageTwo()
    {
        Place();
        if (_pages.Count == 1)
            _y = float.MaxValue;
    }

    /// <summary>Blocks have room on the first page under what stands there.</summary>
    public bool HasRoomOnFirst(List<Block> blocks)
    {
        Place();
        return _pages.Count == 1 && _y + Depth(blocks) <= Bottom;
    }

    /// <summary>What comes next begins a page.</summary>
    public void BeginPage()
    {
        Place();
        if (_pages.Count > 0)
            _y = float.MaxValue;
    }

    /// <summary>The pages, first to last.</summary>
    public IReadOnlyList<IReadOnlyList<Placed>> Finish()
    {
        Place();
        return _pages;
    }

    private void Place()
    {
        if (_waiting.Count == 0)
            return;
        if (_pages.Count == 0 || _y + Depth(_waiting) > Bottom)
            TurnPage();
        foreach (var block in _waiting)
        {
            var first = _pages[^1].Count == 0;
            if (!first && _y + block.SpaceBefore + block.Height > Bottom)
            {
                TurnPage();
                first = true;
            }

            Set(block, first);
        }

        _waiting.Clear();
    }

    private void Set(Block block, bool first)
    {
        if (first && block.RunningHead is { } head)
        {
            _pages[^1].Add(new Placed(head, _y));
            _y += head.Height;
        }

        _y += first ? 0 : block.SpaceBefore;
        _pages[^1].Add(new Placed(block, _y));
        _y += block.Height;
    }

    private void TurnPage()
    {
        if (_pages.Count > 0 && _pages[^1].Count == 0)
            return;
        _pages.Add([]);
        _y = _pages.Count == 1 ? FirstTop : sheet.FlowTop;
    }

    private static float Depth(List<Block> blocks) => blocks.Sum(block => block.SpaceBefore + block.Height);
}
