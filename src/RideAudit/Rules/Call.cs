namespace RideAudit.Rules;

/// <summary>A rule's verdict before it is put in words.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reason">Why it is not judged; null when it is.</param>
/// <param name="Softened">It would be broken, but rests on an estimated threshold.</param>
internal readonly record struct Call(Verdict Verdict, string? Reason = null, bool Softened = false)
{
    public static Call Kept { get; } = new(Verdict.Kept);

    public static Call Watch { get; } = new(Verdict.Watch);

    public static Call Broken { get; } = new(Verdict.Broken);

    public static Call NotJudged(string reason) => new(Verdict.NotJudged, reason);
}
