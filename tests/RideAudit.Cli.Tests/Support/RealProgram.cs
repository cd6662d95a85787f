using System.Diagnostics;

namespace RideAudit.Cli.Tests.Support;

/// <summary>The built program, started as a user starts it.</summary>
internal static class RealProgram
{
    private static readonly string[] Inherited = ["LC_ALL", "LC_CTYPE", "LANG", "NO_COLOR", "TERM", "COLUMNS", "TZ", "RIDEAUDIT_TRACE"];

    public static string Dll { get; } = Path.Combine(AppContext.BaseDirectory, "rideaudit.dll");

    public static Ended Run(string folder, params string[] args) => Run(folder, [("LANG", "C.UTF-8"), ("TZ", "UTC")], args);

    public static Ended Run(string folder, (string Name, string Value)[] environment, params string[] args)
    {
        using var process = Start(folder, environment, args);
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        process.StandardInput.Close();
        process.WaitForExit();
        return new Ended(process.ExitCode, output.Result, error.Result);
    }

    public static Process Start(string folder, (string Name, string Value)[] environment, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Dll, .. args])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var name in Inherited)
            start.Environment.Remove(name);
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        return Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
    }
}
