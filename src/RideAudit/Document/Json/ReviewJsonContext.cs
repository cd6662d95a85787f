using System.Text.Json.Serialization;
using RideAudit.Document.Converters;
using RideAudit.Document.Layouts;
using RideAudit.Figures;
using RideAudit.Held;
using RideAudit.Plan;
using RideAudit.Rides;
using RideAudit.Rules;
using RideAudit.Rules.Changes;
using RideAudit.Units;
using RideAudit.Weeks;

namespace RideAudit.Document.Json;

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    WriteIndented = true,
    Converters =
    [
        typeof(LocalDateJson),
        typeof(OffsetDateTimeJson),
        typeof(IsoWeekJson),
        typeof(NamedNumbersJson),
        typeof(EnumJson<Verdict>),
        typeof(EnumJson<Evidence>),
        typeof(EnumJson<ChangeKind>),
        typeof(EnumJson<Tier>),
        typeof(EnumJson<Experience>),
        typeof(EnumJson<ExceptionKind>),
        typeof(EnumJson<RideSport>),
        typeof(EnumJson<RideKind>),
        typeof(EnumJson<DayKind>),
        typeof(EnumJson<KindSource>),
        typeof(EnumJson<PlannedKind>),
        typeof(EnumJson<StressSource>),
        typeof(EnumJson<MeasureSource>),
        typeof(EnumJson<ThresholdSource>),
        typeof(EnumJson<WeekStructure>),
        typeof(EnumJson<HeldOutcome>),
        typeof(EnumJson<RosterNeed>),
    ])]
[JsonSerializable(typeof(ReviewDocument))]
[JsonSerializable(typeof(RidesDocument))]
[JsonSerializable(typeof(WeeksDocument))]
[JsonSerializable(typeof(RulesDocument))]
[JsonSerializable(typeof(NextDocument))]
[JsonSerializable(typeof(RosterDocument))]
internal sealed partial class ReviewJsonContext : JsonSerializerContext;
