using NodaTime;
using RideAudit.Cli.Terminal;

namespace RideAudit.Cli.Output;

/// <summary>Finds a place for a file that nobody named a place for.</summary>
internal static class OutputPlace
{
    /// <summary>The current folder where it can be written, else beside what is reviewed, else the user's documents. Looked at at once, before anything is read.</summary>
    /// <param name="shell">For the current folder and the documents.</param>
    /// <param name="reviewed">The folder or file that is reviewed, full path.</param>
    /// <param name="name">The file's name, from the first day of its week.</param>
    /// <returns>The file, once the week is known.</returns>
    /// <exception cref="UserError">None of them can be written.</exception>
    public static Func<LocalDate, OutputFile> Beside(Shell shell, string reviewed, Func<LocalDate, string> name)
    {
        if (OutputFile.WhyNot(shell.CurrentDirectory) is not { } problem)
            return week => OutputFile.In(shell.CurrentDirectory, name(week));
        foreach (var folder in new[] { Path.GetDirectoryName(reviewed), shell.Documents })
            if (!string.IsNullOrEmpty(folder) && OutputFile.WhyNot(folder) is null)
                return week => OutputFile.In(folder, name(week), Path.Combine(folder, name(week)));
        throw new UserError($"The PDF cannot be written to the current folder, {shell.CurrentDirectory}: {problem} With --pdf you name a place.");
    }
}
