using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using RideAudit.Formatting;

namespace RideAudit.Document.Converters;

internal sealed class IsoWeekJson : JsonConverter<IsoWeek>
{
    public override IsoWeek Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var parts = reader.GetString()!.Split("-W");
        return new IsoWeek(int.Parse(parts[0], CultureInfo.InvariantCulture), int.Parse(parts[1], CultureInfo.InvariantCulture));
    }

    public override void Write(Utf8JsonWriter writer, IsoWeek value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
