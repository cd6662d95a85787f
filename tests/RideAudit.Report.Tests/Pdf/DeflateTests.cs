using System.IO.Compression;
using System.Text;
using RideAudit.Report.Fonts;
using RideAudit.Report.Pdf;

namespace RideAudit.Report.Tests.Pdf;

/// <summary>Our compression, read back by the runtime's (zlib).</summary>
public sealed class DeflateTests
{
    public static IEnumerable<object[]> Samples()
    {
        yield return ["nothing", Array.Empty<byte>()];
        yield return ["one byte", new byte[] { 7 }];
        yield return ["two bytes", new byte[] { 7, 7 }];
        yield return ["zeros", new byte[100_000]];
        yield return ["text", Encoding.ASCII.GetBytes(string.Join('\n', Enumerable.Range(0, 4000).Select(i => $"{i % 37}.{i * 7 % 100} {i % 11} l")))];
        var noise = new byte[70_000];
        new Random(3).NextBytes(noise);
        yield return ["noise", noise];
        yield return ["noise twice, farther apart than can be seen", new[] { noise, noise }.SelectMany(part => part).ToArray()];
        yield return ["codes of very different weights", Enumerable.Range(0, 24).SelectMany(i => Enumerable.Repeat((byte)i, 1 << Math.Min(i, 15)).Select((value, at) => at % 2 == 0 ? value : (byte)(200 + (at % 50)))).ToArray()];
        yield return ["a font", InterPackage.Read("Inter-Regular.ttf")];
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_is_compressed_comes_back(string name, byte[] data)
    {
        using var stream = new ZLibStream(new MemoryStream(Deflate.Compress(data)), CompressionMode.Decompress);
        using var back = new MemoryStream();
        stream.CopyTo(back);

        Assert.True(data.AsSpan().SequenceEqual(back.ToArray()), name);
    }

    [Fact]
    public void Streams_of_many_lengths_and_alphabets_come_back()
    {
        var random = new Random(20260622);
        for (var round = 0; round < 300; round++)
        {
            var data = new byte[random.Next(600)];
            var alphabet = 1 + random.Next(256);
            for (var i = 0; i < data.Length; i++)
                data[i] = (byte)(random.Next(4) == 0 || i < 9 ? random.Next(alphabet) : data[i - 1 - random.Next(8)]);
            What_is_compressed_comes_back($"round {round}", data);
        }
    }

    [Fact]
    public void Weights_that_grow_like_Fibonaccis_numbers_stay_within_fifteen_bits()
    {
        var data = new List<byte>();
        (var one, var two) = (1, 1);
        for (byte symbol = 0; symbol < 22; symbol++, (one, two) = (two, one + two))
            data.AddRange(Enumerable.Repeat(symbol, one));
        byte[] shuffled = [.. data];
        new Random(1).Shuffle(shuffled);

        What_is_compressed_comes_back("Fibonacci", shuffled);
    }

    [Fact]
    public void It_is_about_as_small_as_zlib_makes_it()
    {
        var text = (byte[])Samples().First(sample => (string)sample[0] == "a font")[1];
        using var packed = new MemoryStream();
        using (var stream = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            stream.Write(text);

        Assert.InRange(Deflate.Compress(text).Length, 1, packed.Length * 1.1);
    }
}
