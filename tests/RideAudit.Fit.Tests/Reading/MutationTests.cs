using RideAudit.Fit.Tests.Hazards;

namespace RideAudit.Fit.Tests.Reading;

/// <summary>Ten thousand damaged files from a fixed seed: whatever is done to a file, decoding ends with a result.</summary>
public class MutationTests
{
    private const int Mutants = 10_000;
    private const int Seed = 20_260_705;
    private const long BytesAtLeast = 200_000;
    private const long BytesPerByte = 600;

    [Fact]
    public void No_mutant_makes_decoding_throw_or_invent_records_or_take_much_memory()
    {
        byte[][] files = [.. HazardTable.All.Where(h => h.IsGood).Select(h => h.Bytes)];
        Random random = new(Seed);
        for (var i = 0; i < Mutants; i++)
        {
            var mutant = Mutate(files[random.Next(files.Length)], files, random);
            var before = GC.GetAllocatedBytesForCurrentThread();
            var read = FitDecoder.Decode(mutant);
            var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

            var bytes = read.Rejection is null && FitContent.Sniff(mutant) == FitContentKind.Gzip ? 70_000 : mutant.Length;
            Assert.InRange(allocated, 0, BytesAtLeast + (BytesPerByte * bytes));
            Assert.InRange(read.Parts.Sum(p => p.Records.Count), 0, bytes);
            Assert.Equal(read.Rejection is null, read.Parts.Count > 0);
            Assert.All(read.Parts, IsSound);
        }
    }

    private static void IsSound(FitPart part)
    {
        var count = part.Records.Count;
        Assert.Equal(count, part.Records.Timestamps.Length);
        foreach (var heartRate in part.Records.HeartRate)
            Assert.True(float.IsNaN(heartRate) || heartRate is >= 1 and <= 254);
        foreach (var power in part.Records.Power)
            Assert.True(float.IsNaN(power) || power is >= 0 and < 65_535);
        Assert.Equal(count, part.Records.InTimeOrder().Length);
    }

    private static byte[] Mutate(byte[] file, byte[][] others, Random random)
    {
        List<byte> bytes = [.. file];
        for (var changes = random.Next(1, 6); changes > 0 && bytes.Count > 0; changes--)
            Change(bytes, others, random);
        return [.. bytes];
    }

    private static void Change(List<byte> bytes, byte[][] others, Random random)
    {
        int at = random.Next(bytes.Count), length = Math.Min(random.Next(1, 40), bytes.Count - at);
        switch (random.Next(8))
        {
            case 0: bytes[at] ^= (byte)(1 << random.Next(8)); break;
            case 1: bytes[at] = (byte)random.Next(256); break;
            case 2: bytes[at] = random.Next(2) == 0 ? (byte)0 : byte.MaxValue; break;
            case 3: bytes.RemoveRange(at, length); break;
            case 4: bytes.InsertRange(at, bytes.GetRange(at, length)); break;
            case 5: bytes.InsertRange(at, Bytes.Noise(length, (uint)random.Next())); break;
            case 6: bytes.RemoveRange(at, bytes.Count - at); break;
            default:
                var other = others[random.Next(others.Length)];
                var from = random.Next(other.Length);
                bytes.InsertRange(at, other[from..Math.Min(other.Length, from + 100)]);
                break;
        }
    }
}
