using System.Collections.Immutable;
using RideAudit.Document;
using RideAudit.Report.Fonts;
using RideAudit.Report.Roster;
using RideAudit.Report.Svg;
using RideAudit.Report.Words;

namespace RideAudit.Report;

/// <summary>What a screen shows of a roster beside tables of its own: the overview's sentences, and each rider's last weeks.</summary>
/// <param name="Headline">How many broke a rule and how many have no review.</param>
/// <param name="Subline">The other counts and what the order is; empty for a single rider.</param>
/// <param name="LineKey">How the small spacing lines are to be read.</param>
/// <param name="Weeks">The riders' last weeks, in the roster's order.</param>
public sealed record RosterScreen(string Headline, string Subline, string LineKey, ImmutableArray<RosterScreen.RiderWeeks> Weeks)
{
    /// <summary>Tells and draws a roster.</summary>
    public static RosterScreen Of(RosterDocument roster)
    {
        ArgumentNullException.ThrowIfNull(roster);
        var drawn = SvgMaker.Make(new SmallLinePages(roster), FontSet.OfThisMachine, RosterPdf.Title(roster));
        return new RosterScreen(
            RosterWords.Headline(roster),
            RosterWords.Subline(roster),
            RosterWords.LineKey,
            [.. roster.Riders.Select((rider, i) => new RiderWeeks(rider.Weeks.IsEmpty ? "" : drawn.Pages[i], RosterWords.Weeks(rider)))]);
    }

    /// <summary>One rider's last weeks.</summary>
    /// <param name="Svg">Small spacing lines without text; empty where there are no weeks.</param>
    /// <param name="Words">The same in words; empty where there are no weeks.</param>
    public sealed record RiderWeeks(string Svg, string Words);
}
