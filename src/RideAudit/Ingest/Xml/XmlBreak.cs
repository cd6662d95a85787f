namespace RideAudit.Ingest.Xml;

/// <summary>Where the text of an XML file broke off or was no XML.</summary>
/// <param name="Line">Its line, 1 first.</param>
internal readonly record struct XmlBreak(int Line);
