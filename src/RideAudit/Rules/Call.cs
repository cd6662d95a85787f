namespace RideAudit.Rules;

/// <summary>A rule's verdict before it is put in words.</summary>
/// <param name="Reason">Why it is not judged; null when it is.</param>
/// <param name="Softened">It would be broken, but rests on an estimated threshold.</param>
internal readonly record struct Call(Verdict Verdict, string? Reason = null, bool Softened = false)
{
    /// <summary>Worth naming among what is to change.</summary>
    public bool IsWanting => Verdict is Verdict.Watch or Verdict.Broken;
}
