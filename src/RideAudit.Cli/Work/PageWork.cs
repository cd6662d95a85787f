using System.ComponentModel;
using System.Diagnostics;
using RideAudit.Cli.Output;
using RideAudit.Cli.BrowserPage;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Work;

/// <summary>Writes the browser page that this build carries.</summary>
internal static class PageWork
{
    private const string DefaultFile = "rideaudit.html";

    /// <summary>Writes the page.</summary>
    /// <param name="shell">For relative paths and what is said.</param>
    /// <param name="file">The HTML file; null for the default.</param>
    /// <param name="site">The folder of a static site; null for one file.</param>
    /// <param name="noOpen">Do not open the file.</param>
    /// <exception cref="UserError">Something the user can put right.</exception>
    public static ExitCode Run(Shell shell, string? file, string? site, bool noOpen)
    {
        if (file is not null && site is not null)
            throw new UserError("--out writes one file, --site a folder of files: give one of the two.");
        var page = CarriedPage.Open();
        if (site is not null)
            WriteSite(shell, page, site);
        else
            WriteFile(shell, page, file ?? DefaultFile, noOpen);
        return ExitCode.Done;
    }

    private static void WriteSite(Shell shell, CarriedPage page, string site)
    {
        var folder = shell.FullPath(site);
        foreach (var (path, content) in StaticSite.Files(page))
        {
            var target = Path.Combine(folder, path);
            try
            {
                Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new UserError($"The folder {site} cannot be made: {WriteFault.Of(e)}");
            }
            OutputFile.Write(target, s => s.Write(content), shell.Cancel, Path.Combine(site, path));
        }
        shell.Out.Write($"Wrote the site into {site}: put its files on any host, under any path.\n");
    }

    private static void WriteFile(Shell shell, CarriedPage page, string file, bool noOpen)
    {
        var target = shell.FullPath(file);
        OutputFile.Check(target, file);
        OutputFile.Write(target, s => s.Write(SinglePage.Write(page)), shell.Cancel, file);
        shell.Out.Write($"Wrote {file}: open it in a browser and drop a folder of rides on it.\n");
        if (!noOpen && shell.Interactive)
            OpenInBrowser(shell, target, file);
    }

    private static void OpenInBrowser(Shell shell, string target, string shown)
    {
        try
        {
            using var opened = Process.Start(new ProcessStartInfo(target) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            shell.Out.Write($"It could not be opened from here: open {shown} by hand.\n");
        }
    }
}
