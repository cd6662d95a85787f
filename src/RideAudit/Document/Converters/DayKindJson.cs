using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;
using RideAudit.Weeks;

namespace RideAudit.Document.Converters;

/// <summary>A day's kind; a day without one is to come.</summary>
internal sealed class DayKindJson : JsonConverter<DayKind?>
{
    public override bool HandleNull => true;

    public override DayKind? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => Words.Find<DayKind>(reader.GetString());

    public override void Write(Utf8JsonWriter writer, DayKind? value, JsonSerializerOptions options) => writer.WriteStringValue(DayEntry.WordOf(value));
}
