using System.Text.Json.Serialization;

namespace RideAudit.Document;

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    WriteIndented = true,
    Converters = [typeof(LocalDateJson), typeof(OffsetDateTimeJson), typeof(VerdictJson), typeof(EvidenceJson), typeof(ChangeKindJson), typeof(NamedNumbersJson)])]
[JsonSerializable(typeof(ReviewDocument))]
[JsonSerializable(typeof(RidesDocument))]
[JsonSerializable(typeof(WeeksDocument))]
[JsonSerializable(typeof(RulesDocument))]
[JsonSerializable(typeof(NextWeekDocument))]
[JsonSerializable(typeof(RosterDocument))]
internal sealed partial class ReviewJsonContext : JsonSerializerContext;
