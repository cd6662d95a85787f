using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace RideAudit.Cli.Terminal;

/// <summary>What only Windows knows of its console windows.</summary>
/// <remarks>Source: the Windows console API reference (GetConsoleProcessList, GetConsoleMode, SetConsoleMode), from memory; not run here.</remarks>
[SupportedOSPlatform("windows")]
internal static class WindowsConsole
{
    private const int StandardOutput = -11;
    private const uint VirtualTerminalProcessing = 4;

    /// <summary>No other program is attached to the console: it was opened for this one and closes with it.</summary>
    public static bool IsOurs()
    {
        uint first = 0;
        return GetConsoleProcessList(ref first, 1) == 1;
    }

    /// <summary>Asks the console to understand escape sequences.</summary>
    /// <returns>False when it cannot.</returns>
    public static bool UnderstandEscapes()
    {
        var handle = GetStdHandle(StandardOutput);
        return GetConsoleMode(handle, out var mode)
            && ((mode & VirtualTerminalProcessing) != 0 || SetConsoleMode(handle, mode | VirtualTerminalProcessing));
    }

    [DllImport("kernel32.dll")]
    private static extern uint GetConsoleProcessList(ref uint firstOfList, uint room);

    [DllImport("kernel32.dll")]
    private static extern nint GetStdHandle(int which);

    [DllImport("kernel32.dll")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static extern bool GetConsoleMode(nint handle, out uint mode);

    [DllImport("kernel32.dll")]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static extern bool SetConsoleMode(nint handle, uint mode);
}
