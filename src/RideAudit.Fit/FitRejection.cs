namespace RideAudit.Fit;

/// <summary>Why nothing of a file could be used.</summary>
/// <param name="Reason">No FIT at all, or FIT without any data.</param>
/// <param name="Kind">What the bytes are instead, judged by their beginning.</param>
/// <param name="ByteOffset">Where reading ended, in bytes from the start.</param>
/// <param name="Detail">One plain sentence, lower case, without full stop: "this is a web page, not a FIT file".</param>
public sealed record FitRejection(FitRejectionReason Reason, FitContentKind Kind, long ByteOffset, string Detail);
