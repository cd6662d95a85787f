namespace RideAudit.Ingest.Csv;

/// <summary>A column that is understood.</summary>
/// <param name="Index">Its place, 0 first.</param>
/// <param name="Header">Its header as written.</param>
/// <param name="Channel">What it holds.</param>
/// <param name="Factor">To the channel's own unit (W, bpm, rpm, m/s, m, min).</param>
internal readonly record struct CsvColumn(int Index, string Header, CsvChannel Channel, double Factor);
