namespace RideAudit.Formatting;

/// <summary>The word of an enumeration's member where its name in lower case is not it.</summary>
/// <param name="word">Null where the member has none.</param>
[AttributeUsage(AttributeTargets.Field)]
internal sealed class WordAttribute(string? word) : Attribute
{
    /// <summary>The word.</summary>
    public string? Word => word;
}
