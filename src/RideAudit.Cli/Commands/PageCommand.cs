using RideAudit.Cli.BrowserPage;
using RideAudit.Cli.Output;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Commands;

/// <summary>Writes the browser page that this build carries.</summary>
internal static class PageCommand
{
    private const string DefaultFile = "rideaudit.html";

    /// <summary>The command, ready to be parsed and run.</summary>
    public static ProgramCommand Create(Shell shell)
    {
        var command = new ProgramCommand(
            "page",
            "Write the page that does the same in a browser, as one HTML file or as a static site. It connects to nothing.",
            ("rideaudit page", "write rideaudit.html and open it: drop a folder on it"),
            ("rideaudit page --site public/", "write the static site for a file host"));
        var file = command.File("--out", $"Write the page as this one HTML file. Default: {DefaultFile}.");
        var site = command.File("--site", "Write the page as a static site into this folder instead, for any file host.", "DIR");
        var noOpen = command.Flag("--no-open", "Do not open the file in the browser.");
        command.Refuses(
            asked => asked.GetValue(file) is not null && asked.GetValue(site) is not null,
            "--out writes one file, --site a folder of files: give one of the two.");
        command.Does(asked =>
        {
            var page = CarriedPage.Open();
            if (asked.GetValue(site) is { } folder)
                WriteSite(shell, page, folder);
            else
                WriteFile(shell, page, asked.GetValue(file) ?? DefaultFile, asked.GetValue(noOpen));
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary>Writes the page into the current folder, else among the user's documents, and opens it: what a double click on the program asks for.</summary>
    /// <param name="shell">The world.</param>
    /// <param name="page">The page.</param>
    /// <exception cref="UserError">Neither can be written, or a file of its name is somebody else's.</exception>
    public static ExitCode Open(Shell shell, CarriedPage page)
    {
        var here = OutputFile.WhyNot(shell.CurrentDirectory);
        if (here is not null && (shell.Documents.Length == 0 || OutputFile.WhyNot(shell.Documents) is not null))
            throw new UserError($"The page cannot be written to the current folder, {shell.CurrentDirectory}: {here} 'rideaudit page --out FILE' names a place.");
        var file = OutputFile.Named(shell, here is null ? DefaultFile : Path.Combine(shell.Documents, DefaultFile), OutputKind.Html);
        // Nobody typed this name: a file that has it may be somebody's own.
        if (File.Exists(file.Path) && !OutputKind.Html.Wrote(file.Path))
            throw new UserError($"There is a file {file.Path} that this program did not write: move it, or name another place with 'rideaudit page --out FILE'.");
        file.Write(s => s.Write(SinglePage.Write(page)), shell.Cancel);
        shell.Out.Write($"Wrote {file.Shown} and opened it: drop a folder of rides on it. A folder dropped on the program itself gives a PDF.\n");
        shell.OpenFile(file.Path);
        return ExitCode.Done;
    }

    private static void WriteSite(Shell shell, CarriedPage page, string site)
    {
        var folder = shell.FullPath(site);
        foreach (var (path, content) in StaticSite.Files(page))
        {
            var target = Path.Combine(folder, path);
            var into = Path.GetDirectoryName(target)!;
            try
            {
                Directory.CreateDirectory(into);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new UserError($"The folder {site} cannot be made: {WriteFault.Of(e)}");
            }
            OutputFile.In(into, Path.GetFileName(target), Path.Combine(site, path)).Write(s => s.Write(content), shell.Cancel);
        }
        shell.Out.Write($"Wrote the site into {site}: put its files on any host, under any path.\n");
    }

    private static void WriteFile(Shell shell, CarriedPage page, string typed, bool noOpen)
    {
        var file = OutputFile.Named(shell, typed, OutputKind.Html);
        file.Write(s => s.Write(SinglePage.Write(page)), shell.Cancel);
        shell.Out.Write($"Wrote {typed}: open it in a browser and drop a folder of rides on it.\n");
        if (!noOpen && shell.Interactive)
            shell.OpenFile(file.Path);
    }
}
