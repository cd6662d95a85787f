namespace RideAudit.Ingest.Archives;

/// <summary>What unpacking needs from around it.</summary>
/// <param name="Limits">How much is unpacked at most.</param>
/// <param name="Cancel">Stops between entries.</param>
/// <param name="Open">Opens what was unpacked: its shown name, its bytes, the archives around it; the bytes are given back after it.</param>
internal sealed record ArchiveWork(ReadLimits Limits, CancellationToken Cancel, Func<string, Unpacked, ArchiveLayers, IReadOnlyList<FileContent>> Open);
