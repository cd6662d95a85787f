using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;
using RideAudit.Rules.Changes;

namespace RideAudit.Document;

internal sealed class ChangeKindJson : JsonConverter<ChangeKind>
{
    public override ChangeKind Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var word = reader.GetString();
        return Enum.GetValues<ChangeKind>().First(k => Words.Of(k) == word);
    }

    public override void Write(Utf8JsonWriter writer, ChangeKind value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}
