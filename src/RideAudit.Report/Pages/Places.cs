using System.Globalization;

namespace RideAudit.Report.Pages;

/// <summary>Names of the places that links lead to.</summary>
internal static class Places
{
    /// <summary>A rule's finding.</summary>
    public static string Rule(string rule) => "rule-" + rule;

    /// <summary>A ride's strip, counted from 0 in the order of the review.</summary>
    public static string Ride(int index) => "ride-" + (index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>A rider of a roster, counted from 0.</summary>
    public static string Rider(int place) => "rider-" + (place + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>A place that the outline leads to.</summary>
    public static string Outline(int page, int item) => string.Create(CultureInfo.InvariantCulture, $"at-{page + 1}-{item + 1}");
}
