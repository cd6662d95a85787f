using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Plan.Blocks;

namespace RideAudit.Document.Converters;

/// <summary>Blocks as the text they are written in.</summary>
internal sealed class SessionBlocksJson : JsonConverter<SessionBlocks>
{
    public override SessionBlocks? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        SessionBlocks.Read(reader.GetString()!, out _);

    public override void Write(Utf8JsonWriter writer, SessionBlocks value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
