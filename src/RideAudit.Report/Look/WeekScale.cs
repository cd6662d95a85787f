namespace RideAudit.Report.Look;

/// <summary>The scale of a week drawn as blocks of time by height, so that no day overruns and no block is cut.</summary>
/// <param name="Hours">Hours that a day is wide: those of the busiest day, and no fewer than keep a short ride narrow.</param>
/// <param name="Tallest">Height of the tallest block as a multiple of threshold power’s, 1 or more.</param>
internal readonly record struct WeekScale(double Hours, double Tallest)
{
    private const double QuietestDayHours = 2.75;

    /// <summary>The scale of blocks.</summary>
    /// <param name="hours">Hours of each day.</param>
    /// <param name="heights">Height of each block as a multiple of threshold power’s.</param>
    public static WeekScale Of(IEnumerable<double> hours, IEnumerable<double> heights) => new(hours.Append(QuietestDayHours).Max(), heights.Append(1).Max());
}
