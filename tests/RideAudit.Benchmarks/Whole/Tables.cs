using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Runtime.InteropServices;
using RideAudit.Benchmarks.Roster;

namespace RideAudit.Benchmarks.Whole;

/// <summary>Measures the program as a whole process and writes the tables of docs/performance.md.</summary>
/// <param name="program">The native program.</param>
/// <param name="isShort">True for a small folder and one round, written nowhere: it only shows that everything runs.</param>
internal sealed class Tables(string program, bool isShort)
{
    private const string AsOf = "2035-06-01";
    private readonly string _root = Repository();
    private readonly string _folder = Directory.CreateTempSubdirectory("rideaudit-tables-").FullName;
    private readonly int _rounds = isShort ? 1 : 7;

    /// <summary>Measures and writes.</summary>
    public void Write()
    {
        try
        {
            Put("machine", Machine());
            Put("ten years", TenYears());
            Put("linear", Linear());
            Put("roster", Roster());
            Put("browser", Browser());
        }
        finally
        {
            Directory.Delete(_folder, recursive: true);
        }
    }

    private void Put(string mark, string text)
    {
        Console.WriteLine($"{mark}\n{text}");
        if (!isShort)
            Page.Write(Path.Combine(_root, "docs", "performance.md"), mark, text);
    }

    private string Machine()
    {
        var processor = File.ReadLines("/proc/cpuinfo").FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[1].Trim() ?? "unknown processor";
        var load = File.ReadAllText("/proc/loadavg").Split(' ')[0];
        return $"{processor}, {Environment.ProcessorCount} processors, {RuntimeInformation.OSDescription}, .NET {Environment.Version}, node {Said("node", "--version")}. "
            + $"Load when the run began: {load}, so times on the clock say more of the neighbours than processor time does. Medians of {_rounds} rounds, the commands of a table in turn.";
    }

    private string TenYears()
    {
        var weeks = isShort ? 4 : 520;
        RosterFolder.Make(Path.Combine(_folder, "ten"), 1, weeks);
        var ten = Path.Combine(_folder, "ten", "rider-01");
        var packed = Directory.CreateDirectory(Path.Combine(_folder, "packed")).FullName;
        foreach (var file in Directory.GetFiles(ten))
            Pack(file, Path.Combine(packed, Path.GetFileName(file)));
        var demo = Path.Combine(_root, "testdata", "demo");
        var pdf = Path.Combine(_folder, "review.pdf");
        var contest = new Contest()
            .Add("`cat` of ten years", "sh", "-c", $"cat {ten}/*.fit")
            .Add("review of ten years", program, "review", ten, "--as-of", AsOf, "--no-pdf", "--quiet")
            .Add("`gzip -dc` of ten years, packed", "sh", "-c", $"gzip -dc {packed}/*.gz")
            .Add("review of ten years, packed", program, "review", packed, "--as-of", AsOf, "--no-pdf", "--quiet")
            .Add("review of the demo, with its PDF", program, "review", demo, "--as-of", "2026-06-22", "--pdf", pdf, "--quiet")
            .Add("`--help`", program, "--help")
            .Add("`rules`", program, "rules");
        contest.Run(_rounds);
        var table = Page.Table(
            ["command", "processor, s", "on the clock, s", "peak, MB"],
            contest.Names.Select(n => new[] { n, Seconds(contest.Median(n, r => r.Processor)), Seconds(contest.Median(n, r => r.Wall)), Whole(contest.Median(n, r => r.PeakMb)) }));
        var rides = 5 * weeks;
        var perRide = 1e6 * (contest.Median("review of ten years", r => r.Processor) - contest.Median("`--help`", r => r.Processor)) / rides;
        var text = table + $"\nRatios, round by round, processor time over processor time: the review of ten years is {Times(contest, "review of ten years", "`cat` of ten years")} `cat`, "
            + $"packed {Times(contest, "review of ten years, packed", "`gzip -dc` of ten years, packed")} unpacking alone; {Whole(perRide)} µs a ride.";
        return text + Official(ten, demo);
    }

    private string Official(string ten, string demo)
    {
        var script = Path.Combine(_root, "tests", "crosschecks", "decode-folder.mjs");
        if (!Directory.Exists(Path.Combine(_root, "tests", "crosschecks", "node_modules")))
            return " The official decoder is not installed (`npm ci` in tests/crosschecks) and was not run.";
        // It takes a minute or two for ten years: two rounds, beside reviews of their own.
        var contest = new Contest()
            .Add("the demo", program, "review", demo, "--as-of", "2026-06-22", "--pdf", Path.Combine(_folder, "review.pdf"), "--quiet")
            .Add("official, the demo", "node", script, demo)
            .Add("ten years", program, "review", ten, "--as-of", AsOf, "--no-pdf", "--quiet")
            .Add("official, ten years", "node", script, ten)
            .Run(isShort ? 1 : 2);
        return "\n\nAgainst the official JavaScript decoder (npm, default mode), which decodes the same files and does nothing else, in the same run: the demo's whole review, PDF and all, takes "
            + $"{Share(contest, "the demo", "official, the demo")} of its processor time ({Seconds(contest.Median("official, the demo", r => r.Processor))} s), "
            + $"ten years {Share(contest, "ten years", "official, ten years")} ({Seconds(contest.Median("official, ten years", r => r.Processor))} s).";
    }

    private string Linear()
    {
        int[] counts = isShort ? [5, 10, 20] : [100, 1_000, 10_000];
        var contest = new Contest();
        foreach (var count in counts)
        {
            RosterFolder.Make(Path.Combine(_folder, $"n{count}"), 1, count / 5);
            var after = new DateOnly(2025, 6, 2).AddDays(7 * (count / 5) + 7).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            contest.Add(Name(count), program, "review", Path.Combine(_folder, $"n{count}", "rider-01"), "--as-of", after, "--no-pdf", "--quiet");
        }
        contest.Run(_rounds);
        var points = counts.Select(c => ((double)c, contest.Median(Name(c), r => r.Processor))).ToArray();
        var (slope, start, fit) = Line(points);
        return Page.Table(["rides", "processor, s", "peak, MB"], counts.Select(c => new[] { Name(c), Seconds(contest.Median(Name(c), r => r.Processor)), Whole(contest.Median(Name(c), r => r.PeakMb)) }))
            + string.Create(CultureInfo.InvariantCulture, $"\nA straight line through them: {1e6 * slope:0} µs a ride and {1000 * start:0} ms for the start, R² = {fit:0.0000}.");
    }

    private string Roster()
    {
        var folder = Path.Combine(_folder, "roster");
        RosterFolder.Make(folder, isShort ? 2 : 40, isShort ? 4 : 52);
        string[] command = [program, "roster", folder, "--as-of", "2026-06-01", "--out", Path.Combine(_folder, "out")];
        var contest = new Contest().Add("two cores", ["taskset", "-c", "0,1", .. command]).Add("one core", ["taskset", "-c", "0", .. command]).Run(isShort ? 1 : 3);
        return Page.Table(
            ["`roster`", "processor, s", "on the clock, s", "peak, MB"],
            contest.Names.Select(n => new[] { n, Seconds(contest.Median(n, r => r.Processor)), Seconds(contest.Median(n, r => r.Wall)), Whole(contest.Median(n, r => r.PeakMb)) }))
            + string.Create(CultureInfo.InvariantCulture, $"\nOn the clock two cores are {contest.Ratio("one core", "two cores", r => r.Wall):0.00} times as fast as one.");
    }

    private string Browser()
    {
        var tests = Path.Combine(_root, "tests", "web");
        if (!Directory.Exists(Path.Combine(tests, "node_modules")))
            return "The page was not measured: `npm ci --ignore-scripts` in tests/web was not run.\n";
        var site = Path.Combine(_folder, "site");
        if (Run(program, "page", "--site", site) is null)
            return "The page was not measured: this program was built before the page, and carries none.\n";
        string[] folders = [Path.Combine(_root, "testdata", "demo")];
        if (!isShort)
        {
            RosterFolder.Make(Path.Combine(_folder, "year"), 1, 52);
            folders = [.. folders, Named("a year", Path.Combine(_folder, "year", "rider-01")), Named("ten years", Path.Combine(_folder, "ten", "rider-01"))];
        }
        return Run("node", [Path.Combine(tests, "figures.mjs"), site, .. folders]) ?? throw new InvalidOperationException("tests/web/figures.mjs failed: see above.");
    }

    private string Named(string name, string folder) => Directory.CreateSymbolicLink(Path.Combine(_folder, name), folder).FullName;

    private static string? Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? said : null;
    }

    private static (double Slope, double Start, double Fit) Line((double X, double Y)[] points)
    {
        var (x, y) = (points.Average(p => p.X), points.Average(p => p.Y));
        var spread = points.Sum(p => (p.X - x) * (p.X - x));
        var slope = points.Sum(p => (p.X - x) * (p.Y - y)) / spread;
        var left = points.Sum(p => Math.Pow(p.Y - y - slope * (p.X - x), 2));
        return (slope, y - slope * x, 1 - left / points.Sum(p => (p.Y - y) * (p.Y - y)));
    }

    private static void Pack(string file, string target)
    {
        if (!file.EndsWith(".fit", StringComparison.Ordinal))
        {
            File.Copy(file, target);
            return;
        }
        using var packed = new GZipStream(File.Create(target + ".gz"), CompressionLevel.Optimal);
        packed.Write(File.ReadAllBytes(file));
    }

    private static string Name(int rides) => rides.ToString("#,0", CultureInfo.InvariantCulture);

    private static string Seconds(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Whole(double value) => value.ToString("0", CultureInfo.InvariantCulture);

    private static string Times(Contest contest, string name, string other) =>
        string.Create(CultureInfo.InvariantCulture, $"{contest.Ratio(name, other, r => r.Processor):0.0} ×");

    private static string Share(Contest contest, string name, string other) =>
        string.Create(CultureInfo.InvariantCulture, $"1/{contest.Ratio(other, name, r => r.Processor):0}");

    private static string Said(string program, string argument) => Run(program, argument)?.Trim() ?? "unknown";

    private static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "RideAudit.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Run this inside the repository.");
        return folder;
    }
}
