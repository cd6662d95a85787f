using System.Text.Json;
using CsvHelper;
using RideAudit.Cli.Output;
using RideAudit.Cli.Tests.Support;
using RideAudit.Document.Json;

namespace RideAudit.Cli.Tests.Output;

/// <summary>RFC 4180, and the JSON's names.</summary>
public class CsvTests
{
    [Fact]
    public void Rides_have_the_JSONs_names_and_values() =>
        SameAsJson(Written(w => CsvTable.Write(w, CsvFields.Rides, Samples.Rides().Rides)), ReviewJson.Write(Samples.Rides()), "rides");

    [Fact]
    public void Weeks_have_the_JSONs_names_and_values() =>
        SameAsJson(Written(w => CsvTable.Write(w, CsvFields.Weeks, Samples.Weeks().Weeks)), ReviewJson.Write(Samples.Weeks()), "weeks");

    // RFC 4180, sections 2.1, 2.6 and 2.7: CRLF ends a record; fields with comma, quote or line end are quoted; a quote inside is doubled.
    [Fact]
    public void Fields_are_quoted_as_RFC_4180_asks()
    {
        var ride = Samples.Rides().Rides[0] with { File = "a, \"b\"\nc.fit" };
        var text = Written(w => CsvTable.Write(w, CsvFields.Rides, [ride]));
        Assert.Contains("\r\n\"a, \"\"b\"\"\nc.fit\",", text, StringComparison.Ordinal);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_name_is_never_a_spreadsheets_formula()
    {
        var ride = Samples.Rides().Rides[0] with { File = "=HYPERLINK(1)" };
        var text = Written(w => CsvTable.Write(w, CsvFields.Rides, [ride]));
        Assert.Contains("\"'=HYPERLINK(1)\"", text, StringComparison.Ordinal);
    }

    private static string Written(Action<TextWriter> write)
    {
        using var writer = new StringWriter();
        write(writer);
        return writer.ToString();
    }

    private static void SameAsJson(string csv, string json, string array)
    {
        using var document = JsonDocument.Parse(json);
        using var reader = CsvReader.Create(new StringReader(csv));
        var rows = 0;
        foreach (var element in document.RootElement.GetProperty(array).EnumerateArray())
        {
            Assert.True(reader.Read());
            rows++;
            foreach (var name in reader.Headers)
                Assert.Equal(ValueAt(element, name), reader[name].ToString());
        }
        Assert.False(reader.Read());
        Assert.True(rows > 0);
    }

    private static string ValueAt(JsonElement element, string path)
    {
        foreach (var part in path.Split('.'))
        {
            if (element.ValueKind == JsonValueKind.Null)
                return "";
            element = element.ValueKind == JsonValueKind.Array ? element[int.Parse(part)] : element.GetProperty(part);
        }
        return element.ValueKind switch
        {
            JsonValueKind.Null => "",
            JsonValueKind.Array => string.Join("; ", element.EnumerateArray().Select(e => e.GetString())),
            _ => element.ToString().Replace("True", "true", StringComparison.Ordinal).Replace("False", "false", StringComparison.Ordinal),
        };
    }
}
