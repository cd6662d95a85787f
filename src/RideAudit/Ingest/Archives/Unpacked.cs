namespace RideAudit.Ingest.Archives;

/// <summary>What unpacking gave.</summary>
/// <param name="Bytes">The bytes; of a damaged stream those before the damage.</param>
/// <param name="Outcome">How it went.</param>
internal readonly record struct Unpacked(byte[] Bytes, UnpackOutcome Outcome);
