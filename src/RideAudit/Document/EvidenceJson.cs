using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Document;

internal sealed class EvidenceJson : JsonConverter<Evidence>
{
    public override Evidence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var word = reader.GetString();
        return Enum.GetValues<Evidence>().First(e => Words.Of(e) == word);
    }

    public override void Write(Utf8JsonWriter writer, Evidence value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}
