using System.Globalization;
using BenchmarkDotNet.Running;
using RideAudit.Benchmarks.Roster;
using RideAudit.Benchmarks.Whole;

switch (args)
{
    // The folder that docs/performance.md times `rideaudit roster` on.
    case ["make-roster", var folder, var riders, var weeks]:
        RosterFolder.Make(folder, int.Parse(riders, CultureInfo.InvariantCulture), int.Parse(weeks, CultureInfo.InvariantCulture));
        break;
    // The page's tables of whole processes; "short" runs everything once on little and writes nothing.
    case ["tables", var program, .. var how]:
        new Tables(Path.GetFullPath(program), isShort: how is ["short"]).Write();
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        break;
}
