using NodaTime.Text;
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

    /// <summary>The overview.</summary>
    /// <param name="asOf">The date it looks back from, ISO 8601.</param>
    public string Json(string asOf) => Document.Json.ReviewJson.Write(RosterBuilder.Build(LocalDatePattern.Iso.Parse(asOf).Value, _riders));
}
