using System.Diagnostics;

namespace RideAudit.Cli.Tests.Support;

/// <summary>Runs a line as a user types it, with the program on the path.</summary>
internal static class Bash
{
    private static readonly string Shim = MakeShim();

    public static Ended Run(string folder, string line)
    {
        var start = new ProcessStartInfo("bash", ["-c", line])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var name in new[] { "LC_ALL", "LC_CTYPE", "NO_COLOR", "COLUMNS", "RIDEAUDIT_TRACE" })
            start.Environment.Remove(name);
        start.Environment["LANG"] = "C.UTF-8";
        start.Environment["TZ"] = "UTC";
        start.Environment["PATH"] = $"{Shim}{Path.PathSeparator}{Environment.GetEnvironmentVariable("PATH")}";
        using var process = Process.Start(start) ?? throw new InvalidOperationException("bash did not start.");
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Close();
        process.WaitForExit();
        return new Ended(process.ExitCode, output.Result, error.Result);
    }

    private static string MakeShim()
    {
        var folder = Directory.CreateTempSubdirectory("rideaudit-shim-").FullName;
        var script = Path.Combine(folder, "rideaudit");
        File.WriteAllText(script, $"#!/bin/sh\nexec dotnet '{RealProgram.Dll}' \"$@\"\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(script, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return folder;
    }
}
