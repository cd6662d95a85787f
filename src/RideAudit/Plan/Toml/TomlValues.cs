using System.Globalization;
using System.Text;
using NodaTime;

namespace RideAudit.Plan.Toml;

/// <summary>Values as a rider file writes them.</summary>
internal static class TomlValues
{
    /// <summary>A number with up to four decimals; null writes nothing.</summary>
    public static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    public static string Date(LocalDate value) => value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A name of an enumeration in lower case and quotes.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => $"\"{value.ToString().ToLowerInvariant()}\"";

    /// <summary>A text in quotes, on one line whatever it holds.</summary>
    public static string Text(string value)
    {
        var text = new StringBuilder("\"");
        foreach (var letter in value)
        {
            _ = letter switch
            {
                '"' or '\\' => text.Append('\\').Append(letter),
                < ' ' or '\u007f' => text.Append(' '),
                _ => text.Append(letter),
            };
        }
        return text.Append('"').ToString();
    }
}
