namespace RideAudit.Document.Notes;

/// <summary>How a part of a note is set.</summary>
public enum NoteWeight
{
    /// <summary>As the rest.</summary>
    Plain,

    /// <summary>Strong: <c>**so**</c>, <c>__so__</c>, and headings.</summary>
    Strong,

    /// <summary>Slanted: <c>*so*</c>, <c>_so_</c>.</summary>
    Slanted,
}
