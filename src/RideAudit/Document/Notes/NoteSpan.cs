namespace RideAudit.Document.Notes;

/// <summary>A part of a note’s line that is set one way.</summary>
/// <param name="Text">The text, without marks.</param>
/// <param name="Weight">How it is set.</param>
public readonly record struct NoteSpan(string Text, NoteWeight Weight = NoteWeight.Plain);
