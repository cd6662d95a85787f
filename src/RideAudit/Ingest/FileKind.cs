namespace RideAudit.Ingest;

/// <summary>What a file is, told from its first bytes.</summary>
internal enum FileKind
{
    Empty,
    Fit,
    Gzip,
    Zip,
    OtherArchive,
    Tcx,
    Gpx,
    WebPage,
    Json,
    OtherXml,
    Pdf,
    Image,
    Text,
    Binary,
}
