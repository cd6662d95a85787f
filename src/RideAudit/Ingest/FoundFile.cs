namespace RideAudit.Ingest;

/// <summary>A file under the folder.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">Path under the folder with <c>/</c>.</param>
/// <param name="LooksLikeRide">Its ending is one that ride files have: not being one is then worth a notice.</param>
internal readonly record struct FoundFile(string Path, string Name, bool LooksLikeRide);
