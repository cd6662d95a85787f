using System.Collections.Immutable;

namespace RideAudit.Plan.Blocks;

/// <summary>Reads a text of blocks by its grammar (docs/plan.md). What cannot be read is a mistake; reading goes on behind the next comma.</summary>
internal sealed class BlocksReader(string text)
{
    private const int MostRepeats = 100;
    private const int MostStretches = 2000;
    private const int DeepestNest = 3;

    private readonly BlockCursor _at = new(text);
    private readonly List<BlocksMistake> _mistakes = [];

    public ImmutableArray<BlocksMistake> Mistakes => [.. _mistakes.OrderBy(m => m.Column)];

    public ImmutableArray<Block> Read()
    {
        var items = Items(0);
        if (_mistakes.Count > 0)
            return items;
        CheckEnd(items);
        CheckMeasures();
        if (Count(items) > MostStretches)
            _mistakes.Add(new BlocksMistake(1, $"more than {MostStretches} stretches", "a session that somebody can ride"));
        return items;
    }

    private ImmutableArray<Block> Items(int depth)
    {
        var items = new List<Block>();
        do
        {
            try
            {
                Item(items, depth);
            }
            catch (BlockCursor.Unread unread)
            {
                _mistakes.Add(unread.Mistake);
                SkipItem(depth > 0);
            }
            if (_at.Here.Text is "," || _at.Here.IsEnd || (_at.Here.Text is ")" && depth > 0))
                continue;
            _mistakes.Add(_at.Wrong("a comma, or the end"));
            SkipItem(depth > 0);
        }
        while (_at.Take(","));
        return [.. items];
    }

    private void Item(List<Block> items, int depth)
    {
        if (_at.Here.Number is not null && _at.Ahead(1).Text == "x")
        {
            items.Add(ReadRepeat(depth));
            return;
        }
        int? seconds = _at.IsDuration ? _at.ReadDuration() : null;
        if (seconds is not null && _at.Here.Text == "between")
        {
            ReadBetween(items, new Block.Stretch(seconds, Effort.Easy));
            return;
        }
        var effort = EffortReader.Read(_at, seconds is { } length ? HowHard(length) : "a length such as 5 min, a number of repeats such as 4 x, or easy to the end");
        if (seconds is null)
            ReadToTheEnd();
        var stretch = new Block.Stretch(seconds, effort);
        if (seconds is not null && _at.Here.Text == "between")
            ReadBetween(items, stretch);
        else
            items.Add(stretch);
    }

    private void ReadBetween(List<Block> items, Block.Stretch stretch)
    {
        if (items is not [.., Block.Repeat { Between: null } repeat])
            throw new BlockCursor.Unread(_at.Wrong("between right after the repeats it belongs to"));
        _at.Skip();
        items[^1] = repeat with { Between = stretch };
    }

    private Block.Repeat ReadRepeat(int depth)
    {
        if (_at.Here.Number is not { } number || number != Math.Floor(number) || number is < 1 or > MostRepeats)
            throw new BlockCursor.Unread(_at.Wrong($"a number of repeats from 1 to {MostRepeats}"));
        _at.Skip(2);
        if (_at.Here.Text == "(")
            return new Block.Repeat((int)number, ReadNest(depth), null);
        if (_at.Here.Number is not null && _at.Ahead(1).Text == "/")
        {
            var (on, off) = _at.ReadPair();
            return new Block.Repeat((int)number, [new Block.Stretch(on, EffortReader.Read(_at, HowHard(on))), new Block.Stretch(off, Effort.Easy)], null);
        }
        if (!_at.IsDuration)
        {
            // A number alone lacks its unit: the mistake stands behind it.
            var lacksUnit = _at.Here.Number is not null;
            _at.Skip(lacksUnit ? 1 : 0);
            throw new BlockCursor.Unread(_at.Wrong(lacksUnit ? "s, min or h after a length" : "a length such as 6 min, a pair such as 40/20 s, or ( and what is repeated"));
        }
        var seconds = _at.ReadDuration();
        return new Block.Repeat((int)number, [new Block.Stretch(seconds, EffortReader.Read(_at, HowHard(seconds)))], null);
    }

    private ImmutableArray<Block> ReadNest(int depth)
    {
        if (depth >= DeepestNest)
            throw new BlockCursor.Unread(_at.Wrong($"at most {DeepestNest} brackets within one another"));
        _at.Skip();
        var inside = Items(depth + 1);
        return _at.Take(")") ? inside : throw new BlockCursor.Unread(_at.Wrong("the closing bracket )"));
    }

    private void ReadToTheEnd()
    {
        foreach (var word in (string[])["to", "the", "end"])
        {
            if (!_at.Take(word))
                throw new BlockCursor.Unread(_at.Wrong("a length before it, or to the end after it"));
        }
    }

    private void CheckEnd(ImmutableArray<Block> items)
    {
        var allowed = items is [.., Block.Stretch { Seconds: null }] ? 1 : 0;
        if (_at.Words.Count(w => w.Text == "end") > allowed)
            _mistakes.Add(new BlocksMistake(_at.Words.First(w => w.Text == "end").Column, "to the end", "to the end only once, as the last of the session"));
    }

    private void CheckMeasures()
    {
        var hearts = _at.Words.FindIndex(w => w.Text == "hr");
        var powers = Enumerable.Range(0, _at.Words.Count).FirstOrDefault(i => _at.Words[i].Text == "%" && _at.Words[i + 1].Text != "hr", -1);
        if (hearts >= 0 && powers >= 0)
            _mistakes.Add(new BlocksMistake(_at.Words[Math.Max(hearts, powers)].Column, "shares of power and of heart rate in one session", "one of the two"));
    }

    /// <summary>Goes on to the next comma, or the bracket that closes this nest.</summary>
    private void SkipItem(bool nested)
    {
        for (var depth = 0; !_at.Here.IsEnd; _at.Skip())
        {
            if (depth == 0 && (_at.Here.Text == "," || (nested && _at.Here.Text == ")")))
                return;
            if (_at.Here.Text == "(")
                depth++;
            else if (_at.Here.Text == ")" && depth > 0)
                depth--;
        }
    }

    private static string HowHard(int seconds) => $"how hard the {BlocksWriter.Duration(seconds)} are";

    private static int Count(ImmutableArray<Block> items) =>
        items.Sum(i => i is Block.Repeat r ? r.Count * (Count(r.Inside) + (r.Between is null ? 0 : 1)) : 1);
}
