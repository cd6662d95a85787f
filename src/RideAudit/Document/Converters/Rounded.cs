using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;

namespace RideAudit.Document.Converters;

/// <summary>Writes a document's unrounded figures with the decimals that the JSON promises.</summary>
internal static class Rounded
{
    internal sealed class To0() : Figures(0);

    internal sealed class To1() : Figures(1);

    internal sealed class To2() : Figures(2);

    internal sealed class To3() : Figures(3);

    internal sealed class To4() : Figures(4);

    /// <summary>A figure, one that may be missing, or several.</summary>
    internal abstract class Figures(int decimals) : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) =>
            typeToConvert == typeof(double) || typeToConvert == typeof(double?) || typeToConvert == typeof(ImmutableArray<double>) || typeToConvert == typeof(ImmutableArray<double>?);

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            typeToConvert == typeof(double) ? new One(decimals)
            : typeToConvert == typeof(double?) ? new OneOrNone(decimals)
            : typeToConvert == typeof(ImmutableArray<double>) ? new Several(decimals)
            : new SeveralOrNone(decimals);
    }

    private sealed class One(int decimals) : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value.To(decimals));
    }

    private sealed class OneOrNone(int decimals) : JsonConverter<double?>
    {
        public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null ? null : reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
        {
            if (value is { } known)
                writer.WriteNumberValue(known.To(decimals));
            else
                writer.WriteNullValue();
        }
    }

    private sealed class Several(int decimals) : JsonConverter<ImmutableArray<double>>
    {
        public override ImmutableArray<double> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var figures = ImmutableArray.CreateBuilder<double>();
            while (reader.Read() && reader.TokenType == JsonTokenType.Number)
                figures.Add(reader.GetDouble());
            return figures.ToImmutable();
        }

        public override void Write(Utf8JsonWriter writer, ImmutableArray<double> value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            foreach (var figure in value.IsDefault ? [] : value)
                writer.WriteNumberValue(figure.To(decimals));
            writer.WriteEndArray();
        }
    }

    private sealed class SeveralOrNone(int decimals) : JsonConverter<ImmutableArray<double>?>
    {
        private readonly Several _several = new(decimals);

        public override ImmutableArray<double>? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null ? null : _several.Read(ref reader, typeToConvert, options);

        public override void Write(Utf8JsonWriter writer, ImmutableArray<double>? value, JsonSerializerOptions options)
        {
            if (value is { } known)
                _several.Write(writer, known, options);
            else
                writer.WriteNullValue();
        }
    }
}
