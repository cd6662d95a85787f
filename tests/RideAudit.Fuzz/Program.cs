using RideAudit.Fuzz;
using SharpFuzz;

// First word: the reader. Under afl-fuzz nothing else: inputs come from it. With file names: checks those files once, to look at what a run has found.
var readers = new Dictionary<string, Func<byte[], string>>(StringComparer.Ordinal)
{
    ["fit"] = FitInvariants.Check,
    ["csv"] = bytes => FolderInvariants.Check(bytes, "2026-05-05-ride.csv"),
    ["tcx"] = bytes => FolderInvariants.Check(bytes, "ride.tcx"),
    ["gpx"] = bytes => FolderInvariants.Check(bytes, "ride.gpx"),
    ["zip"] = bytes => FolderInvariants.Check(bytes, "rides.zip"),
    ["rider"] = TextInvariants.CheckRider,
    ["plan"] = TextInvariants.CheckPlan,
    ["note"] = TextInvariants.CheckNote,
};
if (args.Length == 0 || !readers.TryGetValue(args[0], out var check))
{
    Console.Error.WriteLine($"usage: RideAudit.Fuzz {string.Join('|', readers.Keys)} [FILE...]");
    return 2;
}
if (args.Length == 1)
{
    Fuzzer.OutOfProcess.Run(stream =>
    {
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        check(copy.ToArray());
    });
    return 0;
}
foreach (var path in args[1..])
{
    var bytes = File.ReadAllBytes(path);
    check(bytes);
    // The second time, for what is made once a process is made by then.
    var before = GC.GetAllocatedBytesForCurrentThread();
    var found = check(bytes);
    var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
    Console.WriteLine($"{path}: {found}; {bytes.Length} bytes, {allocated} allocated, {(double)allocated / Math.Max(1, bytes.Length):F0} for each");
}
return 0;
