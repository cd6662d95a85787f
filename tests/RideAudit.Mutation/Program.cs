using System.Reflection;
using System.Text.Json;
using RideAudit.Mutation;

// Asks the core's tests, in one process, about each change that dotnet-stryker compiled into the core; tests/mutation.sh calls it.
// coverage NAMESPACES FILE              which changes each test reaches
// ask NAMESPACES FILE IDS ANSWERS       a line a change as soon as it is known; exit 3: begin again, what is answered is not asked again
// fresh NAMESPACES ID WORD              one change in a process of its own, for what a static field keeps; exit 1: noticed
var here = AppContext.BaseDirectory;
var core = new ChangeSwitch(Assembly.LoadFrom(Path.Combine(here, "RideAudit.Core.dll")));
// Before the tests are looked for: their data may already ask the core for something that it keeps.
if (args[0] == "fresh")
    core.Activate(int.Parse(args[2]));
var tests = OneTest.In(Assembly.LoadFrom(Path.Combine(here, "RideAudit.Tests.dll")), args[1].Split(','));
switch (args[0])
{
    case "coverage":
        File.WriteAllText(args[2], JsonSerializer.Serialize(Coverage.Of(tests, core)));
        return 0;
    case "fresh":
        return tests.Any(t => t.Name.Contains(args[3], StringComparison.Ordinal) && !t.Passes()) ? 1 : 0;
    default:
        var reached = JsonSerializer.Deserialize<Dictionary<string, Coverage>>(File.ReadAllText(args[2]))!;
        return new Asking(tests, reached, core, args[4]).All(File.ReadAllLines(args[3]).Select(int.Parse)) ? 0 : 3;
}
