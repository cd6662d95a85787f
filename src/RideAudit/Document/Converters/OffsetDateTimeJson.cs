using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace RideAudit.Document.Converters;

internal sealed class OffsetDateTimeJson : JsonConverter<OffsetDateTime>
{
    // The offset is written in full: +00:00 says that it is known, where Z might be a guess.
    private static readonly OffsetDateTimePattern Pattern =
        OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'sso<+HH:mm>");

    public override OffsetDateTime Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Pattern.Parse(reader.GetString()!).GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, OffsetDateTime value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Pattern.Format(value));
}
