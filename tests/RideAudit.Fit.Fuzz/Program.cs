using RideAudit.Fit.Fuzz;
using SharpFuzz;

// Under afl-fuzz: reads inputs from it. With file names: checks those files once, to look at what a run has found.
if (args.Length == 0)
{
    Fuzzer.OutOfProcess.Run(stream =>
    {
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        Invariants.Check(copy.ToArray());
    });
}
else
{
    foreach (var path in args)
    {
        var file = Invariants.Check(File.ReadAllBytes(path));
        Console.WriteLine($"{path}: {file.Parts.Sum(p => p.Records.Count)} records, {file.FaultCount} faults");
    }
}
