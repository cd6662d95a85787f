namespace RideAudit.Report.Flow;

/// <summary>A block and its place on a page.</summary>
/// <param name="Y">Its top, pt.</param>
internal readonly record struct Placed(Block Block, float Y);
