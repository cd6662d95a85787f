namespace RideAudit.Plan.Blocks;

/// <summary>A word, number or sign of a text of blocks.</summary>
/// <param name="Column">Its first letter, 1 first.</param>
/// <param name="Text">Lower case; a sign as one letter; empty at the end of the text.</param>
/// <param name="Number">The number it is; null for words and signs.</param>
internal readonly record struct BlockWord(int Column, string Text, double? Number)
{
    public bool IsEnd => Text.Length == 0;

    /// <summary>Splits a text into words, numbers and signs, with the end as the last.</summary>
    public static List<BlockWord> Split(string text)
    {
        var words = new List<BlockWord>();
        for (var at = 0; at < text.Length;)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
                continue;
            }
            var end = EndOf(text, at);
            var word = text[at..end];
            double? number = char.IsAsciiDigit(word[0])
                && double.TryParse(word, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var value)
                ? value
                : null;
            words.Add(new BlockWord(at + 1, Plain(word), number));
            at = end;
        }
        words.Add(new BlockWord(text.TrimEnd().Length + 1, "", null));
        return words;
    }

    private static int EndOf(string text, int at)
    {
        var end = at + 1;
        if (char.IsAsciiDigit(text[at]))
        {
            // A point is part of a number only between two digits.
            while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] == '.' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]))))
                end++;
        }
        else if (char.IsLetter(text[at]) && text[at] != '×')
        {
            while (end < text.Length && char.IsLetter(text[end]))
                end++;
        }
        return end;
    }

    private static string Plain(string word) => word switch
    {
        "×" or "*" => "x",
        "–" or "—" or "−" => "-",
        _ => word.ToLowerInvariant(),
    };
}
