using System.Globalization;
using BenchmarkDotNet.Running;
using RideAudit.Benchmarks.Roster;

// make-roster FOLDER RIDERS WEEKS: the folder that docs/performance.md times `rideaudit roster` on.
if (args is ["make-roster", var folder, var riders, var weeks])
    RosterFolder.Make(folder, int.Parse(riders, CultureInfo.InvariantCulture), int.Parse(weeks, CultureInfo.InvariantCulture));
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
