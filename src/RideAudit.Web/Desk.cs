using System.Text.Json;
using NodaTime.Text;
using RideAudit.Document;
using RideAudit.Report;
using RideAudit.Review;

namespace RideAudit.Web;

/// <summary>Several riders side by side, those who need the coach first.</summary>
internal sealed class Desk
{
    private readonly List<RosterInput> _riders = [];

    /// <summary>Puts a rider's latest week on the desk; of the rides nothing is kept.</summary>
    /// <param name="folder">The rider's folder.</param>
    /// <param name="workshop">The rider's files, read.</param>
    /// <param name="asOf">The date to look back from; empty for today.</param>
    public void Add(string folder, Workshop workshop, string asOf)
    {
        var review = workshop.Review(asOf, "");
        var why = review is null ? string.Join(" ", workshop.Unusable().Prepend("No usable ride.")) : null;
        _riders.Add(new RosterInput(folder, review, why, null) { HasRiderFile = workshop.HasRiderFile });
    }

    /// <summary>The overview, as the terminal program's JSON.</summary>
    /// <param name="asOf">The date it looks back from, ISO 8601.</param>
    public string Json(string asOf) => Document.Json.ReviewJson.Write(Build(asOf));

    /// <summary>What the page shows beside the overview's figures, as JSON: the sentences at the top and the riders' last weeks, drawn and in words.</summary>
    /// <param name="asOf">The date it looks back from, ISO 8601.</param>
    public string ScreenJson(string asOf) => JsonSerializer.Serialize(RosterScreen.Of(Build(asOf)), PageJson.Default.RosterScreen);

    private RosterDocument Build(string asOf) => RosterBuilder.Build(LocalDatePattern.Iso.Parse(asOf).Value, _riders);
}
