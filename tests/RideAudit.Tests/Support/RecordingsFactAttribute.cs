namespace RideAudit.Tests.Support;

/// <summary>A test over real recordings, which lie beside the repository and not in it; skipped where they are not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class RecordingsFactAttribute : FactAttribute
{
    public RecordingsFactAttribute()
    {
        if (!Directory.Exists(Folder))
            Skip = "The recordings are not beside this repository.";
    }

    public static string Folder => System.IO.Path.Combine(Repository.Root, "..", "shared", "recordings");
}
