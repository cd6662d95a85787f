namespace RideAudit.Ingest.Csv;

/// <summary>A column that is understood.</summary>
/// <param name="Index">Its place, 0 first.</param>
/// <param name="Header">Its header as written.</param>
/// <param name="Channel">What it holds.</param>
/// <param name="Factor">To the channel's own unit (s, W, bpm, rpm, m/s, m, min).</param>
/// <param name="IsUtc">Its times are universal where they do not say otherwise.</param>
internal readonly record struct CsvColumn(int Index, string Header, CsvChannel Channel, double Factor, bool IsUtc);
