using System.Text.RegularExpressions;

namespace RideAudit.Cli.Output;

/// <summary>The coach's note without the marks that the PDF sets in bold, in italics or as a heading.</summary>
internal static partial class NoteText
{
    /// <summary>The note as plain text, its lines kept.</summary>
    public static string Plain(string note)
    {
        var text = Heading().Replace(note.Trim().ReplaceLineEndings("\n"), "");
        text = Link().Replace(text, "$1");
        text = Bullet().Replace(text, "$1- ");
        text = Strong().Replace(text, "$2");
        return Slanted().Replace(text, "$2");
    }

    [GeneratedRegex(@"^ {0,3}#{1,6}[ \t]+", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"\[([^\]\n]+)\]\([^)\n]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^(\s*)[*+] ", RegexOptions.Multiline)]
    private static partial Regex Bullet();

    [GeneratedRegex(@"(\*\*|__|`)(?=\S)([^\n]+?)(?<=\S)\1")]
    private static partial Regex Strong();

    [GeneratedRegex(@"(?<![\w*])([*_])(?=\S)([^\n*_]+?)(?<=\S)\1(?![\w*])")]
    private static partial Regex Slanted();
}
