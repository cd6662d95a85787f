namespace RideAudit.Report.Drawing;

/// <summary>What a part of a page is to a reader who does not see it.</summary>
internal enum Tag
{
    /// <summary>Furniture that is not read out: page numbers, running heads, rules.</summary>
    Artifact,

    /// <summary>Text.</summary>
    Paragraph,

    /// <summary>The document's heading.</summary>
    Title,

    /// <summary>A section's heading.</summary>
    Heading,

    /// <summary>A picture that a text stands for.</summary>
    Figure,
}
