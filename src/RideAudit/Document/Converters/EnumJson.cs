using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;

namespace RideAudit.Document.Converters;

/// <summary>An enumeration's member as its word; null for one that has none.</summary>
internal sealed class EnumJson<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T> : JsonConverter<T>
    where T : struct, Enum
{
    public override bool HandleNull => true;

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Words.Find<T>(reader.GetString()) ?? throw new JsonException($"Not a word of {typeof(T).Name}.");

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Words.OrNull<T>(value));
}
