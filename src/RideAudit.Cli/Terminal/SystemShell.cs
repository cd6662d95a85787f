using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using NodaTime;
using NodaTime.TimeZones;

namespace RideAudit.Cli.Terminal;

/// <summary>The shell the program is really run from.</summary>
internal static class SystemShell
{
    /// <summary>Looks at the terminal, the environment, the clock and the machine's zone.</summary>
    /// <param name="cancel">Signalled by Ctrl-C.</param>
    public static Shell Open(CancellationToken cancel)
    {
        var dumb = Variable("TERM") == "dumb";
        var colourAsked = string.IsNullOrEmpty(Variable("NO_COLOR")) && !dumb;
        return new Shell
        {
            Out = Utf8(Console.OpenStandardOutput(), autoFlush: false),
            Error = Utf8(Console.OpenStandardError(), autoFlush: true),
            In = Console.In,
            Width = TerminalWidth(),
            Colour = colourAsked && !Console.IsOutputRedirected && AnsiIsUnderstood(),
            Unicode = !dumb && UnicodeIsUnderstood(),
            ShowsProgress = !dumb && !Console.IsErrorRedirected,
            Interactive = !Console.IsInputRedirected && !Console.IsErrorRedirected,
            OwnsWindow = OperatingSystem.IsWindows() && !Console.IsInputRedirected && !Console.IsOutputRedirected && WindowsConsole.IsOurs(),
            OpenFile = Open,
            WaitForKey = () => Console.ReadKey(intercept: true),
            Documents = Environment.GetFolderPath(Environment.SpecialFolder.MyDocuments),
            Clock = SystemClock.Instance,
            Zone = MachineZone(),
            CurrentDirectory = Directory.GetCurrentDirectory(),
            Cancel = cancel,
        };
    }

    private static StreamWriter Utf8(Stream stream, bool autoFlush) =>
        new(new PipeStream(stream), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = autoFlush, NewLine = "\n" };

    private static string? Variable(string name) => Environment.GetEnvironmentVariable(name);

    private static int TerminalWidth()
    {
        if (Console.IsOutputRedirected)
            return int.TryParse(Variable("COLUMNS"), out var columns) && columns is >= 40 and <= 400 ? columns : 80;
        try
        {
            return Math.Clamp(Console.WindowWidth, 40, 400);
        }
        catch (IOException)
        {
            return 80;
        }
    }

    private static bool AnsiIsUnderstood() => !OperatingSystem.IsWindows() || WindowsConsole.UnderstandEscapes();

    // A system without a program for the file has written it all the same.
    private static void Open(string path)
    {
        try
        {
            using var viewer = Process.Start(new ProcessStartInfo(path) { UseShellExecute = true });
        }
        catch (Win32Exception)
        {
        }
    }

    private static bool UnicodeIsUnderstood()
    {
        if (OperatingSystem.IsWindows())
        {
            if (!Console.IsOutputRedirected)
                Console.OutputEncoding = Encoding.UTF8;
            return true;
        }
        var locale = new[] { "LC_ALL", "LC_CTYPE", "LANG" }.Select(Variable).FirstOrDefault(v => !string.IsNullOrEmpty(v)) ?? "C";
        return locale.Replace("-", "", StringComparison.Ordinal).Contains("utf8", StringComparison.OrdinalIgnoreCase)
            || (OperatingSystem.IsMacOS() && locale != "C");
    }

    private static DateTimeZone MachineZone()
    {
        try
        {
            return DateTimeZoneProviders.Tzdb.GetSystemDefault();
        }
        catch (DateTimeZoneNotFoundException)
        {
            return DateTimeZone.Utc;
        }
    }
}
