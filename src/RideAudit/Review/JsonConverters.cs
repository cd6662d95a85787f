using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;
using RideAudit.Rules;

namespace RideAudit.Review;

internal sealed class LocalDateJson : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        LocalDatePattern.Iso.Parse(reader.GetString()!).GetValueOrThrow();

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) =>
        writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}

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

internal sealed class VerdictJson : JsonConverter<Verdict>
{
    public override Verdict Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Enum.GetValues<Verdict>().First(v => Words.Of(v) == reader.GetString());

    public override void Write(Utf8JsonWriter writer, Verdict value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}

internal sealed class EvidenceJson : JsonConverter<Evidence>
{
    public override Evidence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Enum.GetValues<Evidence>().First(e => Words.Of(e) == reader.GetString());

    public override void Write(Utf8JsonWriter writer, Evidence value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}

internal sealed class ChangeKindJson : JsonConverter<ChangeKind>
{
    public override ChangeKind Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Enum.GetValues<ChangeKind>().First(k => Words.Of(k) == reader.GetString());

    public override void Write(Utf8JsonWriter writer, ChangeKind value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Words.Of(value));
}

/// <summary>Named numbers are one object: <c>{ "hours_between": 22.4 }</c>.</summary>
internal sealed class NamedNumbersJson : JsonConverter<ImmutableArray<NamedNumber>>
{
    public override ImmutableArray<NamedNumber> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var numbers = ImmutableArray.CreateBuilder<NamedNumber>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            reader.Read();
            numbers.Add(new NamedNumber(name, reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble()));
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
                writer.WriteNumberValue(known.To(4));
            else
                writer.WriteNullValue();
        }
        writer.WriteEndObject();
    }
}
