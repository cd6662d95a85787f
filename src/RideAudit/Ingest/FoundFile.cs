namespace RideAudit.Ingest;

/// <summary>A file under the folder.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">Path under the folder with <c>/</c>, fit to be shown.</param>
internal readonly record struct FoundFile(string Path, string Name);
