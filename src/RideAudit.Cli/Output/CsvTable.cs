using System.Globalization;
using CsvHelper;
using RideAudit.Formatting;

namespace RideAudit.Cli.Output;

/// <summary>Rows as CSV (RFC 4180): UTF-8, CRLF, a header of the JSON's names, missing values empty.</summary>
internal static class CsvTable
{
    // Names of files and riders come from other people: a spreadsheet must not run one as a formula.
    private static readonly CsvWriterOptions Options = new() { Injection = CsvInjection.Escape, TrueValue = "true", FalseValue = "false" };

    /// <summary>Writes a header and the rows.</summary>
    /// <typeparam name="T">What a row is made from.</typeparam>
    /// <param name="fields">Header names and the value of each in a row.</param>
    public static void Write<T>(TextWriter output, IReadOnlyList<(string Name, Func<T, object?> Value)> fields, IEnumerable<T> rows)
    {
        using var csv = CsvWriter.Create(output, Options, leaveOpen: true);
        csv.WriteHeader([.. fields.Select(f => f.Name)]);
        foreach (var row in rows)
        {
            foreach (var field in fields)
                WriteField(csv, field.Value(row));
            csv.EndRecord();
        }
        csv.Flush();
    }

    private static void WriteField(CsvWriter csv, object? value)
    {
        switch (value)
        {
            case null:
                csv.WriteField((string?)null);
                break;
            case double number:
                csv.WriteField(number, "R", CultureInfo.InvariantCulture);
                break;
            case long or int:
                csv.WriteField(Convert.ToInt64(value, CultureInfo.InvariantCulture), "", CultureInfo.InvariantCulture);
                break;
            case bool flag:
                csv.WriteField(flag);
                break;
            default:
                csv.WriteField(PlainText.Of((string)value, '\uFFFD', keepLines: true));
                break;
        }
    }
}
