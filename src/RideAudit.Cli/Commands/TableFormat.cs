namespace RideAudit.Cli.Commands;

/// <summary>How rows are written.</summary>
internal enum TableFormat
{
    /// <summary>For reading.</summary>
    Table,

    /// <summary>RFC 4180.</summary>
    Csv,

    /// <summary>The published shape.</summary>
    Json,
}
