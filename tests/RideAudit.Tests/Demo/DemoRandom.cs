namespace RideAudit.Tests.Demo;

/// <summary>SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"; from memory): the same numbers on every machine and runtime.</summary>
internal sealed class DemoRandom(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next number, 0 to below 1.</summary>
    public double Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 11) / 9007199254740992.0;
    }

    /// <summary>About normal, mean 0, deviation 1: twelve uniforms less six, so that no machine's logarithm matters.</summary>
    public double Normal()
    {
        double sum = -6;
        for (var i = 0; i < 12; i++)
            sum += Next();
        return sum;
    }

    public int Between(int least, int most) => least + (int)(Next() * (most - least + 1));
}
