namespace RideAudit.Fit;

/// <summary>What some bytes are, judged by their beginning.</summary>
public enum FitContentKind
{
    /// <summary>Nothing known.</summary>
    Unknown,

    /// <summary>No bytes at all.</summary>
    Empty,

    /// <summary>A FIT file.</summary>
    Fit,

    /// <summary>A gzip stream.</summary>
    Gzip,

    /// <summary>A zip archive.</summary>
    Zip,

    /// <summary>A GPX track (XML).</summary>
    Gpx,

    /// <summary>A TCX training file (XML).</summary>
    Tcx,

    /// <summary>Other XML.</summary>
    Xml,

    /// <summary>A web page.</summary>
    WebPage,

    /// <summary>JSON text.</summary>
    Json,

    /// <summary>Other text, CSV for instance.</summary>
    Text,
}
