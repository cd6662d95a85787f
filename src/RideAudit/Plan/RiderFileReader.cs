
namespace RideAudit.Plan;

/// <summary>Reads a rider file (TOML). What the writer of the file did wrong is returned, all of it at once, not thrown.</summary>
public static class RiderFileReader
{
    /// <summary>Reads the text of a rider file.</summary>
    /// <param name="toml">The text.</param>
    /// <param name="name">The file's name, for the messages.</param>
    public static RiderFileResult Read(string toml, string name) => throw new NotImplementedException();
}
