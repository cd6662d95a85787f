using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace RideAudit.Document.Converters;

internal sealed class LocalDateJson : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        LocalDatePattern.Iso.Parse(reader.GetString()!).GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) =>
        writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}
