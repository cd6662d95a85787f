using RideAudit.Plan.Toml;

namespace RideAudit.Plan.Blocks;

/// <summary>A place in a text of blocks that moves on word by word.</summary>
internal sealed class BlockCursor(string text)
{
    private const int LongestStretch = 12 * 3600;

    private static readonly string[] Known =
        ["s", "sec", "min", "h", "x", "easy", "very", "all", "out", "feel", "hr", "rising", "falling", "between", "to", "the", "end"];

    private int _at;

    /// <summary>All words, the end of the text as the last.</summary>
    public List<BlockWord> Words { get; } = BlockWord.Split(text);

    public BlockWord Here => Words[_at];

    /// <summary>A length and its unit stand here.</summary>
    public bool IsDuration => Here.Number is not null && UnitOf(Ahead(1).Text) is not null;

    public BlockWord Ahead(int steps) => Words[Math.Min(_at + steps, Words.Count - 1)];

    public void Skip(int words = 1) => _at = Math.Min(_at + words, Words.Count - 1);

    /// <summary>Takes a word if it stands here.</summary>
    public bool Take(string word)
    {
        if (Here.Text != word)
            return false;
        Skip();
        return true;
    }

    /// <summary>Reads <c>1 h 30 min</c>: units from the greatest to the smallest.</summary>
    public int ReadDuration()
    {
        var first = Here;
        double seconds = 0;
        var smallest = int.MaxValue;
        while (Here.Number is { } number && UnitOf(Ahead(1).Text) is { } unit && unit < smallest)
        {
            seconds += number * unit;
            smallest = unit;
            Skip(2);
        }
        return Seconds(first, seconds);
    }

    /// <summary>Reads <c>40/20 s</c>, two lengths of one unit.</summary>
    public (int On, int Off) ReadPair()
    {
        var on = Here;
        Skip(2);
        var off = Here;
        if (off.Number is null || UnitOf(Ahead(1).Text) is not { } unit)
            throw new Unread(Wrong("two lengths and their unit, such as 40/20 s"));
        Skip(2);
        return (Seconds(on, on.Number!.Value * unit), Seconds(off, off.Number.Value * unit));
    }

    /// <summary>What stands here, against what should.</summary>
    public BlocksMistake Wrong(string allowed)
    {
        var strange = Here.Text.Length > 1 && char.IsLetter(Here.Text[0]) && !Known.Contains(Here.Text);
        return new BlocksMistake(Here.Column, Here.IsEnd ? "the end of the text" : TomlWords.Shortened(Here.Text), allowed, strange ? NearestName.Of(Here.Text, Known) : null);
    }

    private static int Seconds(BlockWord word, double seconds) => seconds == Math.Floor(seconds) && seconds is >= 1 and <= LongestStretch
        ? (int)seconds
        : throw new Unread(new BlocksMistake(word.Column, word.Text, "a length of whole seconds, at most 12 h"));

    private static int? UnitOf(string word) => word switch
    {
        "s" or "sec" or "secs" or "second" or "seconds" => 1,
        "min" or "mins" or "minute" or "minutes" => 60,
        "h" or "hour" or "hours" => 3600,
        _ => null,
    };

    /// <summary>Leaves the reading of one item; it never leaves the reader of the text.</summary>
    internal sealed class Unread(BlocksMistake mistake) : Exception
    {
        public BlocksMistake Mistake { get; } = mistake;
    }
}
