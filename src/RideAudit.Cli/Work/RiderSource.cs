using System.Text;
using RideAudit.Cli.Terminal;
using RideAudit.Ingest;
using RideAudit.Plan;

namespace RideAudit.Cli.Work;

/// <summary>Finds and reads the rider file.</summary>
internal static class RiderSource
{
    /// <summary>The name looked for in the folder of rides.</summary>
    public const string FileName = "rider.toml";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads the rider file that was named, or the folder's own, or takes the defaults.</summary>
    /// <param name="shell">For relative paths.</param>
    /// <param name="typed">The file named on the command line; null when none was.</param>
    /// <param name="folder">The folder of rides; null when there is none.</param>
    /// <exception cref="UserError">The file is missing, unreadable or broken.</exception>
    public static RiderFound Find(Shell shell, string? typed, string? folder)
    {
        if (typed is not null)
            return new(ReadTyped(shell, typed), []);
        if (folder is null)
            return new(new Rider(), []);
        var own = Path.Combine(folder, FileName);
        if (File.Exists(own))
            return new(Read(own, FileName), []);
        return new(new Rider(), [new FileNotice(
            FileName,
            "assumption",
            null,
            "No rider file was given and the folder has no rider.toml: defaults are used, and threshold power is taken from the recordings or estimated. 'rideaudit new-rider' writes one.",
            Unusable: false)]);
    }

    // A folder stands for the rider file in it.
    private static Rider ReadTyped(Shell shell, string typed)
    {
        var path = shell.FullPath(typed);
        return Directory.Exists(path) ? Read(Path.Combine(path, FileName), Path.Combine(typed, FileName)) : Read(path, typed);
    }

    private static Rider Read(string path, string shown)
    {
        string text;
        try
        {
            text = File.ReadAllText(path, Strict);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UserError(File.Exists(path)
                ? $"The rider file {shown} cannot be read: {e.Message}"
                : $"There is no rider file {shown}. 'rideaudit new-rider {shown}' writes one.");
        }
        catch (DecoderFallbackException)
        {
            throw new UserError($"The rider file {shown} is not UTF-8: a letter such as é was saved in another encoding. Save it as UTF-8 in your editor.");
        }
        var result = RiderFileReader.Read(text, shown);
        return result.Rider ?? throw new UserError(Mistakes(shown, result));
    }

    private static string Mistakes(string shown, RiderFileResult result)
    {
        var lines = new StringBuilder();
        foreach (var mistake in result.Mistakes)
        {
            if (lines.Length > 0)
                lines.Append('\n');
            lines.Append(Inv($"{shown}:{mistake.Line}:{mistake.Column}: found {mistake.Found}; allowed: {mistake.Allowed}."));
            if (mistake.Nearest is { } nearest)
                lines.Append(Inv($" Did you mean '{nearest}'?"));
        }
        return lines.ToString();
    }

    private static string Inv(FormattableString text) => FormattableString.Invariant(text);
}
