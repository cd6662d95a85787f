namespace RideAudit.Ingest;

/// <summary>A text among the files that is no ride: the rider file, or a note.</summary>
/// <param name="File">Its path with <c>/</c>.</param>
/// <param name="Text">All of it.</param>
public sealed record NamedText(string File, string Text);
