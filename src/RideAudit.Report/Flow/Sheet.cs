namespace RideAudit.Report.Flow;

/// <summary>The paper and its margins, pt.</summary>
internal sealed class Sheet
{
    /// <summary>18 mm.</summary>
    public const float Margin = 18 * 72 / 25.4f;

    private const float HeaderDepth = 30;
    private const float FooterDepth = 24;

    private readonly float _margin = Margin;

    public Sheet(Paper paper) => (Width, Height) = paper == Paper.Letter ? (612, 792) : (595.28f, 841.89f);

    /// <summary>A sheet of any size.</summary>
    public Sheet(float width, float height, float margin) => (Width, Height, _margin) = (width, height, margin);

    public float Width { get; }

    public float Height { get; }

    public float Left => _margin;

    public float Right => Width - _margin;

    public float Top => _margin;

    public float Bottom => Height - _margin;

    public float ContentWidth => Width - (2 * _margin);

    /// <summary>Where the flow of a page begins, under its header.</summary>
    public float FlowTop => Top + HeaderDepth;

    /// <summary>Where the flow of a page ends, above its footer.</summary>
    public float FlowBottom => Bottom - FooterDepth;

    /// <summary>Depth of a page's flow.</summary>
    public float FlowHeight => FlowBottom - FlowTop;
}
