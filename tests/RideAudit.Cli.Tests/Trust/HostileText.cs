using RideAudit.Formatting;

namespace RideAudit.Cli.Tests.Trust;

/// <summary>Text that would do something where it is shown, and the search for it in what was made.</summary>
internal static class HostileText
{
    /// <summary>A window title, a cleared screen, a C1 control sequence, a bell, text turned round, marks, separators, a delete.</summary>
    public const string All = "\u001b]0;title\u0007\u001b[2J\u009b31m\u202Egnp\u2066x\u200F\u061C\u2028y\u2029\u007F\u0085z";

    /// <summary>The same as a TOML string writes it.</summary>
    public static string Escaped { get; } = string.Concat(All.Select(c => $"\\u{(int)c:X4}"));

    /// <summary>Nothing of it stands in an output but as text.</summary>
    /// <param name="name">The output's name; its ending says what it is.</param>
    /// <param name="bytes">Its bytes; a picture has no text.</param>
    public static void AssertHarmless(string name, byte[] bytes)
    {
        if (name.EndsWith(".png", StringComparison.Ordinal))
            return;
        var said = name.EndsWith(".pdf", StringComparison.Ordinal) ? PdfText.Shown(bytes)
            : name.EndsWith(".fit", StringComparison.Ordinal) ? string.Concat(Strings(bytes))
            : System.Text.Encoding.UTF8.GetString(bytes);
        var lineEnd = name.EndsWith("csv out", StringComparison.Ordinal) || name.EndsWith(".ics", StringComparison.Ordinal) || name.EndsWith(".csv", StringComparison.Ordinal) ? "\r\n" : "\n";
        Assert.DoesNotContain(said.Replace(lineEnd, "", StringComparison.Ordinal), PlainText.Harms);
    }

    // A FIT file's texts are what its workout and its steps are called.
    private static IEnumerable<string> Strings(byte[] fit)
    {
        var file = Fit.FitDecoder.Decode(fit, new Fit.FitDecodeOptions());
        Assert.True(file.IsUsable);
        return file.Parts.Select(p => p.Workout!.Name).Concat(file.Parts.SelectMany(p => p.WorkoutSteps).Select(s => s.Name ?? ""));
    }
}
