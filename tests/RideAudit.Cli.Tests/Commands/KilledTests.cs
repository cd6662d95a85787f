using System.Diagnostics;
using System.Security.Cryptography;
using RideAudit.Cli.Tests.Support;

namespace RideAudit.Cli.Tests.Commands;

/// <summary>The real program, killed while it writes.</summary>
public class KilledTests
{
    private const int Seed = 20260622;

    // A dozen in every run of the tests; a longer run asks for more.
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("RIDEAUDIT_KILLS"), out var kills) ? kills : 12;
    private static readonly (string, string)[] Plain = [("LANG", "C.UTF-8"), ("TZ", "UTC")];
    private static readonly string[] Line = ["review", "rides", "--as-of", Demo.AsOf, "--pdf", "out/a.pdf", "--png", "out/a.png", "--json", "out/a.json", "--quiet"];
    private static readonly string[] Outputs = ["out/a.json", "out/a.pdf", "out/a.png"];

    [Fact]
    public void Killed_at_any_point_every_output_is_old_or_new_every_input_untouched_and_the_next_run_tidies_up()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        Directory.CreateDirectory(folder.At("out"));
        var inputs = Hashes(folder, "rides");
        var clock = Stopwatch.StartNew();
        Assert.Equal(0, RealProgram.Run(folder.Path, Plain, Line).Code);
        var length = clock.ElapsedMilliseconds;
        var whole = Outputs.ToDictionary(o => o, o => File.ReadAllBytes(folder.At(o)));
        var random = new Random(Seed);
        for (var i = 0; i < Kills; i++)
        {
            foreach (var output in Outputs)
                folder.Write(output, "old");
            using var process = RealProgram.Start(folder.Path, Plain, Line);
            // Every other one is shot as soon as something is being written, the rest anywhere on the way.
            if (i % 2 == 0)
                WaitForWriting(process, folder);
            else
                process.WaitForExit((int)random.NextInt64(length));
            process.Kill();
            process.WaitForExit();
            foreach (var output in Outputs)
            {
                var found = File.ReadAllBytes(folder.At(output));
                Assert.True(found.AsSpan().SequenceEqual("old"u8) || found.AsSpan().SequenceEqual(whole[output]), $"{output} is neither old nor new.");
            }
            Assert.Equal(inputs, Hashes(folder, "rides"));
        }
        Assert.Equal(0, RealProgram.Run(folder.Path, Plain, Line).Code);
        Assert.Equal(Outputs, folder.Names().Where(n => n.StartsWith("out/", StringComparison.Ordinal)));
        Assert.All(Outputs, o => Assert.Equal(whole[o], File.ReadAllBytes(folder.At(o))));
    }

    [Fact]
    public async Task Two_runs_at_once_leave_one_whole_file()
    {
        using var folder = new TempFolder();
        Demo.CopyTo(folder, from: "2026-06-20");
        Directory.CreateDirectory(folder.At("out"));
        var alone = RealProgram.Run(folder.Path, Plain, Line);
        var whole = File.ReadAllBytes(folder.At("out/a.pdf"));
        var both = await Task.WhenAll(Enumerable.Range(1, 2).Select(_ => Task.Run(() => RealProgram.Run(folder.Path, Plain, Line))));
        Assert.All(both.Append(alone), e => Assert.Equal((0, ""), (e.Code, e.Error)));
        Assert.Equal(whole, File.ReadAllBytes(folder.At("out/a.pdf")));
        Assert.Equal(Outputs, folder.Names().Where(n => n.StartsWith("out/", StringComparison.Ordinal)));
    }

    private static void WaitForWriting(Process process, TempFolder folder)
    {
        while (!process.HasExited && !Directory.EnumerateFiles(folder.At("out"), ".a.*").Any())
            Thread.Sleep(1);
    }

    private static IEnumerable<string> Hashes(TempFolder folder, string under) =>
        [.. Directory.EnumerateFiles(folder.At(under)).Order(StringComparer.Ordinal).Select(f => $"{f} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))}")];
}
