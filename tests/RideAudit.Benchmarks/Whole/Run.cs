using System.Diagnostics;
using System.Globalization;

namespace RideAudit.Benchmarks.Whole;

/// <summary>One run of a command as a whole process, as the operating system accounts for it.</summary>
/// <param name="Processor">Processor time, user and system, s.</param>
/// <param name="Wall">Time on the clock, s.</param>
/// <param name="PeakMb">Most memory, MB.</param>
internal readonly record struct Run(double Processor, double Wall, double PeakMb)
{
    private const string Time = "/usr/bin/time";

    /// <summary>Runs a command to its end, its output thrown away.</summary>
    /// <param name="command">The program and its arguments.</param>
    /// <exception cref="InvalidOperationException">It failed, or there is no GNU time to run it under.</exception>
    public static Run Of(params IEnumerable<string> command)
    {
        if (!File.Exists(Time))
            throw new InvalidOperationException($"{Time} is not here (Debian: time).");
        var report = Path.GetTempFileName();
        try
        {
            var start = new ProcessStartInfo(Time, ["-f", "%U %S %e %M", "-o", report, .. command])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            using var process = Process.Start(start)!;
            var said = process.StandardError.ReadToEndAsync();
            process.StandardOutput.BaseStream.CopyTo(Stream.Null);
            process.WaitForExit();
            if (process.ExitCode != 0)
                throw new InvalidOperationException($"{string.Join(' ', command)} ended with {process.ExitCode}: {said.Result}");
            var figures = File.ReadLines(report).Last().Split(' ').Select(f => double.Parse(f, CultureInfo.InvariantCulture)).ToArray();
            return new Run(figures[0] + figures[1], figures[2], figures[3] * 1024 / 1e6);
        }
        finally
        {
            File.Delete(report);
        }
    }
}
