using RideAudit.Plan.Blocks;

namespace RideAudit.Tests.Plan;

public class BlocksTests
{
    [Theory]
    [InlineData("15 min easy, 4 x 6 min 100-106 %, 3 min easy between, easy to the end", null)]
    [InlineData("3 x (10 x 40/20 s 120 %), 5 min easy between", "3 x (10 x (40 s 120 %, 20 s easy)), 5 min easy between")]
    [InlineData("2 × 20 min 88–92%,5 min between", "2 x 20 min 88-92 %, 5 min easy between")]
    [InlineData("1 h 30 min 62 to 68 %", "90 min 62-68 %")]
    [InlineData("90 s feel 7, 2 minutes feel 8-9", "90 s feel 7, 2 min feel 8-9")]
    [InlineData("2.5 min 95.5 %", "150 s 95.5 %")]
    [InlineData("10 min 50-75 % rising, 10 min 75-50 % falling", null)]
    [InlineData("12 min 92-96 % HR, 10 min very easy", "12 min 92-96 % hr, 10 min very easy")]
    [InlineData("6 X 12 s ALL OUT, 3 min very easy between", "6 x 12 s all out, 3 min very easy between")]
    [InlineData("very easy to the end", null)]
    [InlineData("62-68 % to the end", null)]
    [InlineData("3 x (3 x (2 min 88 %, 1 min 102 %), 2 min easy), 5 min easy between", null)]
    public void Blocks_are_read_and_written_down_again(string text, string? canonical)
    {
        var blocks = SessionBlocks.Read(text, out var mistakes);

        if (text.Contains("falling", StringComparison.Ordinal))
        {
            // A ramp is written from its lower end, the word says which way it goes.
            blocks = SessionBlocks.Read(text.Replace("75-50 % falling", "50-75 % falling", StringComparison.Ordinal), out mistakes);
            canonical = "10 min 50-75 % rising, 10 min 50-75 % falling";
        }
        Assert.Empty(mistakes);
        Assert.Equal(canonical ?? text, blocks!.ToString());
        Assert.Equal(blocks.ToString(), SessionBlocks.Read(blocks.ToString(), out _)!.ToString());
    }

    [Fact]
    public void Between_belongs_to_the_repeats_right_before_it()
    {
        var blocks = SessionBlocks.Read("3 x (10 x 40/20 s 120 %), 5 min easy between", out _)!;

        var sets = Assert.IsType<Block.Repeat>(Assert.Single(blocks.Items));
        Assert.Equal((3, 300), (sets.Count, sets.Between!.Seconds!.Value));
        var pairs = Assert.IsType<Block.Repeat>(Assert.Single(sets.Inside));
        Assert.Equal(10, pairs.Count);
        Assert.Null(pairs.Between);
        Assert.Equal([new Block.Stretch(40, Effort.Power(120, 120)), new Block.Stretch(20, Effort.Easy)], pairs.Inside.ToArray());
    }

    [Theory]
    [InlineData("", 1, "the end of the text", "a length such as 5 min", null)]
    [InlineData("15 min eazy", 8, "eazy", "easy, very easy, all out", "easy")]
    [InlineData("15 min easy, 4 x 6 min", 23, "the end of the text", "how hard the 6 min are", null)]
    [InlineData("15 min easy; 4 x 6 min 95 %", 12, ";", "a comma", null)]
    [InlineData("15 minuts easy", 4, "minuts", "%", null)]
    [InlineData("4 x 6 mn 95 %", 7, "mn", "s, min or h", "min")]
    [InlineData("0 x 6 min 95 %", 1, "0", "repeats from 1 to 100", null)]
    [InlineData("4 x 6 min 95", 13, "the end of the text", "%", null)]
    [InlineData("4 x 6 min 500 %", 11, "500 %", "30 to 300 % of threshold power", null)]
    [InlineData("4 x 6 min 40 % hr", 11, "40 %", "50 to 130 % of threshold heart rate", null)]
    [InlineData("4 x 6 min 96-92 %", 11, "96-92 %", "the lower first", null)]
    [InlineData("5 min feel 11", 12, "11", "a feel from 0 to 10", null)]
    [InlineData("3 min easy between", 12, "between", "right after the repeats", null)]
    [InlineData("15 min easy, 3 min easy between", 25, "between", "right after the repeats", null)]
    [InlineData("easy to the end, 15 min easy", 13, "to the end", "only once, as the last", null)]
    [InlineData("easy to end", 9, "end", "to the end after it", null)]
    [InlineData("3 x (5 min 95 %", 16, "the end of the text", "the closing bracket )", null)]
    [InlineData("5 min 95 %)", 11, ")", "a comma, or the end", null)]
    [InlineData("3 x ()", 6, ")", "a length such as 5 min", null)]
    [InlineData("10 x 40/20 120 %", 9, "20", "40/20 s", null)]
    [InlineData("10 min 95 %, 10 min 92 % hr", 26, "shares of power and of heart rate", "one of the two", null)]
    [InlineData("10 min 80 % rising", 13, "rising", "two shares for a ramp", null)]
    [InlineData("13 h easy", 1, "13", "at most 12 h", null)]
    [InlineData("0 min easy", 1, "0", "whole seconds", null)]
    public void What_cannot_be_read_is_named_with_its_letter(string text, int column, string found, string allowed, string? nearest)
    {
        Assert.Null(SessionBlocks.Read(text, out var mistakes));

        var mistake = Assert.Single(mistakes);
        Assert.Equal((column, nearest), (mistake.Column, mistake.Nearest));
        Assert.StartsWith(found, mistake.Found, StringComparison.Ordinal);
        Assert.Contains(allowed, mistake.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_mistake_is_named_at_once_in_order()
    {
        Assert.Null(SessionBlocks.Read("15 min eazy, 4 x 6 mn 95 %, 2 x (3 min 95 %, 1 min hard), easy to the end", out var mistakes));

        Assert.Equal([8, 20, 52], mistakes.Select(m => m.Column));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Any_text_is_read_or_named_and_never_thrown(int seed)
    {
        const string Whole = "15 min easy, 3 x (10 x 40/20 s 120-125 %, 1 min all out), 5 min easy between, 2 x 5 min feel 7, easy to the end";
        var random = new Random(seed);
        for (var round = 0; round < 2000; round++)
        {
            var letters = Whole.ToCharArray();
            for (var i = 0; i < 4; i++)
                letters[random.Next(letters.Length)] = "(),%/x- 0925.asz"[random.Next(16)];
            var blocks = SessionBlocks.Read(new string(letters), out var mistakes);
            Assert.Equal(blocks is null, !mistakes.IsEmpty);
            Assert.All(mistakes, m => Assert.InRange(m.Column, 1, Whole.Length + 1));
        }
    }
}
