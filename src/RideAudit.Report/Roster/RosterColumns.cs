namespace RideAudit.Report.Roster;

/// <summary>Where the columns of the overview stand, pt from its left edge; figures end where they are said to.</summary>
/// <param name="width">The overview's width, pt.</param>
internal sealed class RosterColumns(float width)
{
    private const float Gap = 8;

    /// <summary>Where the number in the order ends.</summary>
    public const float Number = 14;

    /// <summary>Where the need's mark starts.</summary>
    public const float Mark = 22;

    /// <summary>Where the need's word starts.</summary>
    public const float Need = 34;

    /// <summary>Where the label and the reason start.</summary>
    public const float Label = 108;

    /// <summary>Room of the need's word and counts.</summary>
    public const float NeedWidth = Label - Need - Gap;

    /// <summary>Length of the bar of the low share.</summary>
    public const float Bar = 34;

    /// <summary>The overview's width.</summary>
    public float Width => width;

    /// <summary>Where the ramp ends.</summary>
    public float Ramp => width;

    /// <summary>Where the low share's figure ends.</summary>
    public float Low => width - 36;

    /// <summary>Where the low share's bar starts.</summary>
    public float BarStart => Low - 27 - Bar;

    /// <summary>Where the stress ends.</summary>
    public float Stress => BarStart - 11;

    /// <summary>Where the hours end.</summary>
    public float Hours => Stress - 36;

    /// <summary>Room of the label.</summary>
    public float LabelWidth => Hours - 54 - Label - Gap;

    /// <summary>Room of the reason.</summary>
    public float WhyWidth => width - Label;
}
