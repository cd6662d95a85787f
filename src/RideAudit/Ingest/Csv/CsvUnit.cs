namespace RideAudit.Ingest.Csv;

/// <summary>A unit that a header may carry.</summary>
/// <param name="Name">Its spelling in lower case, without blanks.</param>
/// <param name="Factor">To the channel's own unit.</param>
/// <param name="For">The channels it goes with.</param>
internal readonly record struct CsvUnit(string Name, double Factor, params CsvChannel[] For);
