using System.Collections.Immutable;
using RideAudit.Plan.Toml;

namespace RideAudit.Plan.Blocks;

/// <summary>Reads a text of blocks by its grammar (docs/plan.md). What cannot be read is a mistake; reading goes on behind the next comma.</summary>
internal sealed class BlocksReader(string text)
{
    private const int MostRepeats = 100;
    private const int LongestStretch = 12 * 3600;
    private const int MostStretches = 2000;
    private const int DeepestNest = 3;

    private static readonly string[] Known =
        ["s", "sec", "min", "h", "x", "easy", "very", "all", "out", "feel", "hr", "rising", "falling", "between", "to", "the", "end"];

    private readonly List<BlockWord> words = BlockWord.Split(text);
    private readonly List<BlocksMistake> mistakes = [];
    private int at;

    public ImmutableArray<BlocksMistake> Mistakes => [.. mistakes.OrderBy(m => m.Column)];

    private BlockWord Here => words[at];

    private BlockWord Ahead(int steps) => words[Math.Min(at + steps, words.Count - 1)];

    public ImmutableArray<Block> Read()
    {
        var items = Items(0);
        if (mistakes.Count > 0)
            return items;
        CheckEnd(items);
        CheckMeasures();
        if (Count(items) > MostStretches)
            mistakes.Add(new BlocksMistake(1, $"more than {MostStretches} stretches", "a session that somebody can ride"));
        return items;
    }

    private ImmutableArray<Block> Items(int depth)
    {
        var items = new List<Block>();
        while (true)
        {
            try
            {
                Item(items, depth);
            }
            catch (Unread unread)
            {
                mistakes.Add(unread.Mistake);
                SkipItem(depth > 0);
            }
            if (Here.Text == ")" && depth > 0)
                break;
            if (Here.IsEnd)
                break;
            if (Here.Text == ",")
            {
                at++;
                continue;
            }
            mistakes.Add(Wrong("a comma, or the end"));
            SkipItem(depth > 0);
            if (Here.Text != ",")
                break;
            at++;
        }
        return [.. items];
    }

    private void Item(List<Block> items, int depth)
    {
        if (Here.Number is not null && Ahead(1).Text == "x")
        {
            items.Add(ReadRepeat(depth));
            return;
        }
        int? seconds = IsDuration() ? ReadDuration() : null;
        if (seconds is not null && Here.Text == "between")
        {
            ReadBetween(items, new Block.Stretch(seconds, Effort.Easy));
            return;
        }
        var effort = ReadEffort(seconds is { } length ? $"how hard the {BlocksWriter.Duration(length)} are" : "a length such as 5 min, a number of repeats such as 4 x, or easy to the end");
        if (seconds is null)
            ExpectToTheEnd();
        var stretch = new Block.Stretch(seconds, effort);
        if (seconds is not null && Here.Text == "between")
            ReadBetween(items, stretch);
        else
            items.Add(stretch);
    }

    private void ReadBetween(List<Block> items, Block.Stretch stretch)
    {
        if (items is not [.., Block.Repeat { Between: null } repeat])
            throw new Unread(Wrong("between right after the repeats it belongs to"));
        at++;
        items[^1] = repeat with { Between = stretch };
    }

    private Block.Repeat ReadRepeat(int depth)
    {
        if (Here.Number is not { } number || number != Math.Floor(number) || number is < 1 or > MostRepeats)
            throw new Unread(Wrong($"a number of repeats from 1 to {MostRepeats}"));
        at += 2;
        if (Here.Text == "(")
            return new Block.Repeat((int)number, ReadNest(depth), null);
        if (Here.Number is not null && Ahead(1).Text == "/")
            return new Block.Repeat((int)number, ReadOnAndOff(), null);
        if (!IsDuration())
        {
            // A number alone lacks its unit: the mistake stands behind it.
            var lacksUnit = Here.Number is not null;
            at += lacksUnit ? 1 : 0;
            throw new Unread(Wrong(lacksUnit ? "s, min or h after a length" : "a length such as 6 min, a pair such as 40/20 s, or ( and what is repeated"));
        }
        var seconds = ReadDuration();
        return new Block.Repeat((int)number, [new Block.Stretch(seconds, ReadEffort($"how hard the {BlocksWriter.Duration(seconds)} are"))], null);
    }

    private ImmutableArray<Block> ReadNest(int depth)
    {
        if (depth >= DeepestNest)
            throw new Unread(Wrong($"at most {DeepestNest} brackets within one another"));
        at++;
        var inside = Items(depth + 1);
        if (Here.Text != ")")
            throw new Unread(Wrong("the closing bracket )"));
        at++;
        return inside;
    }

    /// <summary>40/20 s 120 %: so long on, so long easy.</summary>
    private ImmutableArray<Block> ReadOnAndOff()
    {
        var on = Here;
        at += 2;
        var off = Here;
        if (off.Number is null || UnitOf(Ahead(1).Text) is not { } unit)
            throw new Unread(Wrong("two lengths and their unit, such as 40/20 s"));
        at += 2;
        var (onSeconds, offSeconds) = (Seconds(on, on.Number!.Value * unit), Seconds(off, off.Number.Value * unit));
        return [new Block.Stretch(onSeconds, ReadEffort("how hard the first of the two is")), new Block.Stretch(offSeconds, Effort.Easy)];
    }

    private bool IsDuration() => Here.Number is not null && UnitOf(Ahead(1).Text) is not null;

    private int ReadDuration()
    {
        var first = Here;
        double seconds = 0;
        var smallest = int.MaxValue;
        while (Here.Number is { } number && UnitOf(Ahead(1).Text) is { } unit && unit < smallest)
        {
            seconds += number * unit;
            smallest = unit;
            at += 2;
        }
        return Seconds(first, seconds);
    }

    private static int Seconds(BlockWord word, double seconds) => seconds == Math.Floor(seconds) && seconds is >= 1 and <= LongestStretch
        ? (int)seconds
        : throw new Unread(new BlocksMistake(word.Column, word.Text, "a length of whole seconds, at most 12 h"));

    private Effort ReadEffort(string expected)
    {
        switch (Here.Text)
        {
            case "easy":
                at++;
                return Effort.Easy;
            case "very" when Ahead(1).Text == "easy":
                at += 2;
                return Effort.VeryEasy;
            case "all" when Ahead(1).Text == "out":
                at += 2;
                return Effort.AllOut;
            case "feel":
                at++;
                return ReadFeel();
            default:
                return Here.Number is not null ? ReadShare() : throw new Unread(Wrong($"{expected}: easy, very easy, all out, a share such as 95 % or 88-92 % hr, or feel 7"));
        }
    }

    private Effort ReadFeel()
    {
        var first = Here;
        var (from, to) = ReadSpan();
        return from >= 0 && to <= 10 && from <= to
            ? new Effort(EffortMeasure.Feel, from, to)
            : throw new Unread(new BlocksMistake(first.Column, Shown(from, to), "a feel from 0 to 10, the lower first"));
    }

    private Effort ReadShare()
    {
        var first = Here;
        var (from, to) = ReadSpan();
        if (Here.Text != "%")
            throw new Unread(Wrong("% after the share, or min, s or h after a length"));
        at++;
        var heart = Here.Text == "hr";
        if (heart)
            at++;
        var (least, most) = heart ? (50, 130) : (30, 300);
        if (from < least || to > most || from > to)
            throw new Unread(new BlocksMistake(first.Column, $"{Shown(from, to)} %", $"a share from {least} to {most} % of threshold {(heart ? "heart rate" : "power")}, the lower first"));
        var measure = heart ? EffortMeasure.HeartRateShare : EffortMeasure.PowerShare;
        if (Here.Text is not ("rising" or "falling"))
            return new Effort(measure, from, to);
        var rises = Here.Text == "rising";
        if (from == to)
            throw new Unread(Wrong("two shares for a ramp, such as 50-75 % rising"));
        at++;
        return rises ? new Effort(measure, from, to, true) : new Effort(measure, to, from, true);
    }

    private (double From, double To) ReadSpan()
    {
        if (Here.Number is not { } from)
            throw new Unread(Wrong("a number"));
        at++;
        if (Here.Text is not ("-" or "to"))
            return (from, from);
        at++;
        if (Here.Number is not { } to)
            throw new Unread(Wrong("the upper end of the range"));
        at++;
        return (from, to);
    }

    private void ExpectToTheEnd()
    {
        foreach (var word in (string[])["to", "the", "end"])
        {
            if (Here.Text != word)
                throw new Unread(Wrong("a length before it, or to the end after it"));
            at++;
        }
    }

    private void CheckEnd(ImmutableArray<Block> items)
    {
        var endings = Enumerable.Range(0, words.Count).Count(i => words[i].Text == "end");
        var allowed = items is [.., Block.Stretch { Seconds: null }] ? 1 : 0;
        if (endings > allowed)
            mistakes.Add(new BlocksMistake(words.First(w => w.Text == "end").Column, "to the end", "to the end only once, as the last of the session"));
    }

    private void CheckMeasures()
    {
        var hearts = words.FindIndex(w => w.Text == "hr");
        var powers = Enumerable.Range(0, words.Count).FirstOrDefault(i => words[i].Text == "%" && Ahead(words, i + 1).Text != "hr", -1);
        if (hearts >= 0 && powers >= 0)
            mistakes.Add(new BlocksMistake(words[Math.Max(hearts, powers)].Column, "shares of power and of heart rate in one session", "one of the two"));
    }

    private static BlockWord Ahead(List<BlockWord> words, int index) => words[Math.Min(index, words.Count - 1)];

    /// <summary>Goes on to the next comma, or the bracket that closes this nest.</summary>
    private void SkipItem(bool nested)
    {
        for (var depth = 0; !Here.IsEnd; at++)
        {
            if (depth == 0 && (Here.Text == "," || (nested && Here.Text == ")")))
                return;
            if (Here.Text == "(")
                depth++;
            else if (Here.Text == ")" && depth > 0)
                depth--;
        }
    }

    private BlocksMistake Wrong(string allowed)
    {
        var known = Here.Text.Length > 1 && char.IsLetter(Here.Text[0]) && !Known.Contains(Here.Text);
        return new BlocksMistake(Here.Column, Here.IsEnd ? "the end of the text" : TomlWords.Shortened(Here.Text), allowed, known ? NearestName.Of(Here.Text, Known) : null);
    }

    private static int? UnitOf(string word) => word switch
    {
        "s" or "sec" or "secs" or "second" or "seconds" => 1,
        "min" or "mins" or "minute" or "minutes" => 60,
        "h" or "hour" or "hours" => 3600,
        _ => null,
    };

    private static string Shown(double from, double to) => from == to ? FormattableString.Invariant($"{from}") : FormattableString.Invariant($"{from}-{to}");

    private static int Count(ImmutableArray<Block> items) => items.Sum(i => i is Block.Repeat r ? r.Count * (Count(r.Inside) + (r.Between is null ? 0 : 1)) : 1);

    private sealed class Unread(BlocksMistake mistake) : Exception
    {
        public BlocksMistake Mistake { get; } = mistake;
    }
}
