namespace RideAudit.Cli.Terminal;

/// <summary>Breaks and pads text by the columns it takes, wide characters counted as two.</summary>
internal static class Wrap
{
    /// <summary>Breaks at spaces; a word longer than a line is broken inside.</summary>
    /// <param name="text">The text; its line ends are kept.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="firstWidth">Columns of the first line; <paramref name="width"/> when null.</param>
    public static IEnumerable<string> Lines(string text, int width, int? firstWidth = null)
    {
        var room = Math.Max(1, firstWidth ?? width);
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
        {
            var line = "";
            foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (line.Length > 0 && !Fits(word, room - Cells.Of(line) - 1))
                {
                    yield return line;
                    (line, room) = ("", Math.Max(1, width));
                }
                var from = 0;
                while (line.Length == 0 && !Fits(word.AsSpan(from), room))
                {
                    var head = Head(word.AsSpan(from), room);
                    yield return head;
                    (from, room) = (from + head.Length, Math.Max(1, width));
                }
                line = line.Length == 0 ? word[from..] : $"{line} {word}";
            }
            yield return line;
            room = Math.Max(1, width);
        }
    }

    /// <summary>Fills with spaces on the right.</summary>
    public static string Pad(string text, int width) => text + new string(' ', Math.Max(0, width - Cells.Of(text)));

    /// <summary>Fills with spaces on the left.</summary>
    public static string PadLeft(string text, int width) => new string(' ', Math.Max(0, width - Cells.Of(text))) + text;

    /// <summary>Shortens in the middle, so that the start and the ending of a file name both stay.</summary>
    /// <param name="width">Columns to fit into.</param>
    /// <param name="dots">What stands for the part left out.</param>
    public static string Shorten(string text, int width, string dots)
    {
        if (Cells.Of(text) <= width)
            return text;
        var room = Math.Max(0, width - dots.Length);
        var tail = Tail(text, room / 2);
        return Head(text, room - Cells.Of(tail), atLeastOne: false) + dots + tail;
    }

    // Looks no further than the room: what is longer by far costs no more than what is longer by one.
    private static bool Fits(ReadOnlySpan<char> text, int room)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            room -= Cells.Of(rune);
            if (room < 0)
                return false;
        }
        return room >= 0;
    }

    private static string Head(ReadOnlySpan<char> text, int width, bool atLeastOne = true)
    {
        var used = 0;
        var end = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var cells = Cells.Of(rune);
            if (used + cells > width && !(atLeastOne && end == 0))
                break;
            used += cells;
            end += rune.Utf16SequenceLength;
        }
        return text[..end].ToString();
    }

    private static string Tail(string text, int width)
    {
        var used = 0;
        var start = text.Length;
        foreach (var rune in text.EnumerateRunes().Reverse())
        {
            var cells = Cells.Of(rune);
            if (used + cells > width)
                break;
            used += cells;
            start -= rune.Utf16SequenceLength;
        }
        return text[start..];
    }
}
