using System.Runtime.CompilerServices;

namespace RideAudit.Tests.Support;

/// <summary>A test over real recordings, which lie beside the repository and not in it; where they are not there it is skipped and its line says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class RecordingsFactAttribute : FactAttribute
{
    public RecordingsFactAttribute([CallerMemberName] string test = "")
    {
        if (Directory.Exists(Folder))
            return;
        Skip = "Needs the real recordings of ../shared/recordings, which are not beside this repository; testdata/recordings stands in for them.";
        // The test runner prints the name of what it skips and not the reason.
        DisplayName = $"{test}: needs ../shared/recordings, which is not here";
    }

    public static string Folder => Repository.Path("..", "shared", "recordings");
}
