using System.Text.RegularExpressions;
using RideAudit.Ingest.Csv;

namespace RideAudit.Tests.Ingest;

/// <summary>Holds docs/formats.md to the spellings that the program understands, both ways.</summary>
public sealed partial class FormatsPageTests
{
    private static readonly string Page = File.ReadAllText(Repository.Path("docs", "formats.md"));

    public static TheoryData<string> Channels => [.. Enum.GetNames<CsvChannel>()];

    [Theory]
    [MemberData(nameof(Channels))]
    public void Every_header_of_a_channel_is_on_the_page_and_none_besides(string channel)
    {
        var understood = CsvSpellings.Names.Where(n => n.Value.Channel.ToString() == channel).Select(n => n.Key);
        Assert.Equal(understood.Order(StringComparer.Ordinal), Cells(channel, 2).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Channels))]
    public void Every_unit_of_a_channel_is_on_the_page_and_none_besides(string channel)
    {
        var understood = CsvSpellings.Units.Where(u => u.For.Any(f => f.ToString() == channel)).Select(u => u.Name).Distinct();
        Assert.Equal(understood.Order(StringComparer.Ordinal), Cells(channel, 3).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("64 MB", 64L << 20)]
    [InlineData("8 GB", 8L << 30)]
    [InlineData("200,000 entries", 200_000L)]
    public void The_limits_on_the_page_are_those_of_the_program(string words, long value)
    {
        var limits = RideAudit.Ingest.ReadLimits.Default;
        Assert.Contains(words, Page);
        Assert.Contains(value, new[] { limits.LargestFileBytes, limits.LargestArchiveBytes, limits.MostEntries });
    }

    /// <summary>The code spans in a column of a channel's row, as the program compares them.</summary>
    private static IEnumerable<string> Cells(string channel, int column)
    {
        var csv = Page[Page.IndexOf("## CSV, a row a second", StringComparison.Ordinal)..Page.IndexOf("## TCX and GPX", StringComparison.Ordinal)];
        var rows = csv.Split('\n').Where(l => l.StartsWith('|')).Select(l => l.Split('|'));
        var row = Assert.Single(rows, r => r[1].Replace(" ", "").Equals(channel, StringComparison.OrdinalIgnoreCase));
        return CodeSpan().Matches(row[column]).Select(m => string.Concat(CsvHeader.Split(m.Groups[1].Value)));
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex CodeSpan();
}
