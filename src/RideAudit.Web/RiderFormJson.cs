using System.Text.Json.Serialization;

namespace RideAudit.Web;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(RiderForm.State))]
[JsonSerializable(typeof(RiderForm.Answers))]
internal sealed partial class RiderFormJson : JsonSerializerContext;
