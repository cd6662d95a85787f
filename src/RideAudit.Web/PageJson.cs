using System.Text.Json.Serialization;
using RideAudit.Report;

namespace RideAudit.Web;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(RiderForm.State), TypeInfoPropertyName = "Rider")]
[JsonSerializable(typeof(RiderForm.Answers))]
[JsonSerializable(typeof(WeeksAhead.State), TypeInfoPropertyName = "Plan")]
[JsonSerializable(typeof(PlanSheets.RowChange))]
[JsonSerializable(typeof(RosterScreen))]
[JsonSerializable(typeof(NoteTable.Note[]), TypeInfoPropertyName = "Notes")]
internal sealed partial class PageJson : JsonSerializerContext;
