using System.Collections.Immutable;
using RideAudit.Rules;

namespace RideAudit.Report.Words;

/// <summary>Numbers of a finding and limits of a rule in a row, as the rule and the limit word them.</summary>
internal static class NamedNumbers
{
    /// <summary>Parted by commas; those without a value are left out.</summary>
    public static string Of(ImmutableArray<NamedNumber> numbers) => string.Join(", ", numbers.Select(number => number.Text).Where(text => text.Length > 0));
}
