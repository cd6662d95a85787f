namespace RideAudit.Review;

/// <summary>Writes documents as JSON: snake_case, ISO 8601, unit in the name, null for missing.</summary>
public static class ReviewJson
{
    /// <summary>A review as indented UTF-8 JSON ending in a line feed.</summary>
    public static string Write(ReviewDocument document) => throw new NotImplementedException();

    /// <summary>Rides as JSON.</summary>
    public static string Write(RidesDocument document) => throw new NotImplementedException();

    /// <summary>Weeks as JSON.</summary>
    public static string Write(WeeksDocument document) => throw new NotImplementedException();

    /// <summary>Rules as JSON.</summary>
    public static string Write(RulesDocument document) => throw new NotImplementedException();
}
