using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Document;

internal sealed class VerdictJson : JsonConverter<Verdict>
{
    public override Verdict Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var word = reader.GetString();
        return Enum.GetValues<Verdict>().First(v => Words.Of(v) == word);
    }

    public override void Write(Utf8JsonWriter writer, Verdict value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}
