using RideAudit.Document;
using RideAudit.Formatting;
using RideAudit.Report.Drawing;
using RideAudit.Report.Flow;
using RideAudit.Report.Fonts;
using RideAudit.Report.Look;
using RideAudit.Report.Text;

namespace RideAudit.Report.Pages;

/// <summary>The four figures of page one.</summary>
/// <param name="width">Width, pt.</param>
/// <param name="density">How closely it is set.</param>
internal sealed class KeyFigures(ReviewDocument review, FontSet fonts, float width, Density density) : Block
{
    private static readonly TextStyle Large = new(Weight.SemiBold, 20, Palette.Ink);

    /// <inheritdoc/>
    public override float Height => density.Compact ? 61 : 66;

    /// <inheritdoc/>
    public override void Draw(Surface surface, float x, float y)
    {
        surface.Hairline(x, x + width, y);
        (string Figure, string Name, string Context)[] figures = [Hours(), Stress(), Ramp(), Longest()];
        var top = y + (density.Compact ? 0 : 2);
        var column = width / figures.Length;
        for (var i = 0; i < figures.Length; i++)
        {
            var left = x + (i * column);
            surface.Text(figures[i].Figure, Large, left, top + 25);
            TextLine.Fit(fonts, figures[i].Name, Styles.Body, column - 6).Draw(surface, left, top + 40);
            TextLine.Fit(fonts, figures[i].Context, Styles.Quiet, column - 6).Draw(surface, left, top + 53);
        }

        surface.Hairline(x, x + width, y + Height);
    }

    private (string, string, string) Hours()
    {
        var planned = (review.Week.Planned?.Hours ?? review.Rider.PlannedHours) is { } hours
            ? review.Week.Planned is null && review.Rider.PlannedHoursFromHistory ? $"recent mean {Shown.Hours(hours)}" : $"of {Shown.Hours(hours)} planned"
            : "ridden";
        return (Shown.Hours(review.Week.Hours), planned, Shown.Tally(review.Week.RideCount, "ride"));
    }

    private (string, string, string) Stress()
    {
        var context = review.Week.StressUnknownHours > 0
            ? $"{Shown.Hours(review.Week.StressUnknownHours)} unknown"
            : review.Week.StressMeanBefore is { } mean ? $"four-week mean {Shown.Number(mean)}" : "no weeks before";
        return (Shown.Number(review.Week.Stress), "training stress, points", context);
    }

    private (string, string, string) Ramp()
    {
        var context = review.Week.SettlingIn ? $"settling in, load {Shown.Number(review.Week.ChronicLoad)}" : $"chronic load now {Shown.Number(review.Week.ChronicLoad)}";
        return (Shown.Signed(review.Week.RampPerWeek), "ramp, points a week", context);
    }

    private (string, string, string) Longest()
    {
        var context = review.Week.LongRideAskedSeconds is { } asked ? $"{Shown.Length(asked)} asked" : "none asked";
        return (review.Week.LongestRideSeconds > 0 ? Shown.Length(review.Week.LongestRideSeconds) : Shown.Missing, "longest ride", context);
    }
}
