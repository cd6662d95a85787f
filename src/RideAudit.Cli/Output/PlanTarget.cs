using System.Text;
using RideAudit.Cli.Terminal;
using RideAudit.Document.Layouts;
using RideAudit.Ingest;
using RideAudit.Next;
using RideAudit.Plan.Table;

namespace RideAudit.Cli.Output;

/// <summary>A plan table that weeks are laid out in: a new one, or one that is there, whose rows made by hand stay.</summary>
internal sealed class PlanTarget
{
    private readonly OutputFile _file;
    private readonly byte[]? _before;

    private PlanTarget(OutputFile file)
    {
        _file = file;
        _before = File.Exists(file.Path) ? Bytes(file) : null;
        Before = _before is null
            ? PlanSheet.New(file.Shown)
            : PlanFile.Read(_before, file.Shown) ?? throw new UserError($"{file.Shown} is there already and is no plan table: its first row names no date, kind and minutes. Choose another name.");
    }

    /// <summary>The table as it stands.</summary>
    public PlanSheet Before { get; }

    /// <summary>The path as typed.</summary>
    public string Shown => _file.Shown;

    /// <summary>Looks at a target that a user named.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">The path as typed.</param>
    /// <param name="folder">The folder that is read, full path.</param>
    /// <exception cref="UserError">It cannot be written, or is something else than a plan table.</exception>
    public static PlanTarget Named(Shell shell, string typed, string folder) => new(OutputFile.Named(shell, typed, OutputKind.Plan, folder));

    /// <summary>The plan table that the program keeps in a rider's folder.</summary>
    /// <param name="folder">The rider's folder, full path.</param>
    /// <param name="shown">The folder for messages.</param>
    /// <exception cref="UserError">It is something else than a plan table, or cannot be written.</exception>
    public static PlanTarget In(string folder, string shown) => OutputFile.WhyNot(folder) is { } problem
        ? throw new UserError($"The plan table of {shown} cannot be written: {problem}")
        : new(OutputFile.In(folder, FolderFiles.Plan, Path.Combine(shown, FolderFiles.Plan)));

    /// <summary>Lays weeks out in it. A file that would stay the same is not touched.</summary>
    /// <param name="document">The weeks.</param>
    /// <param name="all">All plan tables of the rider together.</param>
    /// <param name="cancel">Looked at before the file is moved into place.</param>
    /// <returns>What is to be said of days that stay as they were; null when there is nothing.</returns>
    public string? Write(NextDocument document, PlanTable all, CancellationToken cancel)
    {
        var (sheet, kept) = PlanRows.Update(Before, document, all);
        var bytes = Encoding.UTF8.GetBytes(PlanTableWriter.Write(sheet));
        if (_before is null || !bytes.AsSpan().SequenceEqual(_before))
            _file.Write(s => s.Write(bytes), cancel);
        return kept.IsEmpty ? null : $"Rows made by hand stay as they are in the plan table: {Formatting.Shown.List(kept.Select(Formatting.Shown.ShortDay))}.";
    }

    private static byte[] Bytes(OutputFile file)
    {
        try
        {
            return File.ReadAllBytes(file.Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError($"{file.Shown} cannot be read: {e.Message}");
        }
    }
}
