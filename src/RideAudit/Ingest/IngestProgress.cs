namespace RideAudit.Ingest;

/// <summary>How far reading a folder has come.</summary>
/// <param name="FilesDone">Files finished, from 1.</param>
/// <param name="FilesFound">Files to read in all, archives counted as one.</param>
/// <param name="CurrentFile">The file just finished.</param>
public readonly record struct IngestProgress(int FilesDone, int FilesFound, string CurrentFile);
