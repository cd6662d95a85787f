namespace RideAudit.Ingest.Tracks;

/// <summary>Warns of recordings whose samples are too far apart to tell riding from standing.</summary>
internal static class SparseNotice
{
    public static FileNotice For(string name) => new(
        name, "sparse", null, "Most of its samples are more than 10 s apart, so nearly all of its time counts as pauses: export it with a sample every second.", false);
}
