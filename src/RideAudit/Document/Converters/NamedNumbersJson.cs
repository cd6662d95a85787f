using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;
using RideAudit.Rules;

namespace RideAudit.Document.Converters;

internal sealed class NamedNumbersJson : JsonConverter<ImmutableArray<NamedNumber>>
{
    public override ImmutableArray<NamedNumber> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var numbers = ImmutableArray.CreateBuilder<NamedNumber>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            numbers.Add(new NamedNumber(name, reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble(), ""));
        }
        return numbers.ToImmutable();
    }

    public override void Write(Utf8JsonWriter writer, ImmutableArray<NamedNumber> value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        foreach (var number in value)
        {
            writer.WritePropertyName(number.Name);
            if (number.Value is { } known && double.IsFinite(known))
                writer.WriteNumberValue(known.To(number.Decimals));
            else
                writer.WriteNullValue();
        }
        writer.WriteEndObject();
    }
}
