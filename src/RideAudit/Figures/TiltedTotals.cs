using System.Numerics;
using System.Runtime.InteropServices;

namespace RideAudit.Figures;

/// <summary>Running totals less a constant power, with the lowest and highest value of every leaf and block of seconds.</summary>
internal sealed class TiltedTotals
{
    private readonly double[] _totals;
    private readonly int _leaf;
    private readonly int _leavesPerBlock;
    private readonly double[] _lowestOfLeaf;
    private readonly double[] _highestOfLeaf;
    private readonly double[] _highestOfTwoLeaves;
    private readonly double[] _lowestOfBlock;
    private readonly double[] _highestOfBlock;

    /// <param name="totals">Running totals; read in whole blocks, so beyond <paramref name="count"/> it holds −∞ for at least a block.</param>
    /// <param name="count">Totals that count.</param>
    /// <param name="leaf">Seconds a leaf, a multiple of a vector's lanes.</param>
    public TiltedTotals(double[] totals, int count, int leaf, int leavesPerBlock)
    {
        (_totals, _leaf, _leavesPerBlock) = (totals, leaf, leavesPerBlock);
        var blocks = (count - 1) / (leaf * leavesPerBlock) + 1;
        _lowestOfLeaf = new double[blocks * leavesPerBlock];
        _highestOfLeaf = new double[blocks * leavesPerBlock];
        _highestOfTwoLeaves = new double[blocks * leavesPerBlock + 1];
        _lowestOfBlock = new double[blocks];
        _highestOfBlock = new double[blocks];
    }

    /// <summary>Takes another constant power.</summary>
    /// <param name="starts">Lowest values are wanted up to this second.</param>
    /// <param name="ends">Highest values are wanted from this second on.</param>
    public void Tilt(double powerW, int starts, int ends)
    {
        var ramp = Ramp(powerW);
        for (var block = 0; block < _lowestOfBlock.Length; block++)
        {
            var first = block * _leavesPerBlock;
            if (first * _leaf > starts && (first + _leavesPerBlock) * _leaf <= ends)
                continue;
            double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
            for (var leaf = first; leaf < first + _leavesPerBlock; leaf++)
            {
                TiltLeaf(leaf, powerW, ramp);
                lowest = Math.Min(lowest, _lowestOfLeaf[leaf]);
                highest = Math.Max(highest, _highestOfLeaf[leaf]);
            }
            (_lowestOfBlock[block], _highestOfBlock[block]) = (lowest, highest);
        }
        for (var leaf = 0; leaf + 1 < _highestOfLeaf.Length; leaf++)
            _highestOfTwoLeaves[leaf] = Math.Max(_highestOfLeaf[leaf], _highestOfLeaf[leaf + 1]);
        _highestOfTwoLeaves[_highestOfLeaf.Length - 1] = _highestOfLeaf[^1];
        _highestOfTwoLeaves[_highestOfLeaf.Length] = double.NegativeInfinity;
    }

    private void TiltLeaf(int leaf, double powerW, Vector<double> ramp)
    {
        var totals = MemoryMarshal.Cast<double, Vector<double>>(_totals.AsSpan(leaf * _leaf, _leaf));
        var atStart = powerW * leaf * _leaf;
        var step = new Vector<double>(powerW * Vector<double>.Count);
        var line = ramp + new Vector<double>(atStart);
        var lowest = totals[0] - line;
        var highest = lowest;
        for (var i = 1; i < totals.Length; i++)
        {
            line += step;
            var tilted = totals[i] - line;
            lowest = Vector.Min(lowest, tilted);
            highest = Vector.Max(highest, tilted);
        }
        (_lowestOfLeaf[leaf], _highestOfLeaf[leaf]) = Reduce(lowest, highest);
    }

    private static Vector<double> Ramp(double powerW)
    {
        Span<double> ramp = stackalloc double[Vector<double>.Count];
        for (var lane = 0; lane < ramp.Length; lane++)
            ramp[lane] = powerW * lane;
        return new Vector<double>(ramp);
    }

    /// <summary>Lowest value of the block that holds a second.</summary>
    public double LowestOfBlock(int second) => _lowestOfBlock[second / (_leaf * _leavesPerBlock)];

    /// <summary>Highest value of the blocks that two seconds span.</summary>
    public double HighestOfBlocks(int from, int to)
    {
        var size = _leaf * _leavesPerBlock;
        var highest = double.NegativeInfinity;
        for (var block = from / size; block <= to / size && block < _highestOfBlock.Length; block++)
            highest = Math.Max(highest, _highestOfBlock[block]);
        return highest;
    }

    /// <summary>The most that a window from one leaf to the two that begin with another can exceed the constant power by.</summary>
    /// <param name="endLeaf">The first of the two leaves of ends; may lie beyond the last.</param>
    public double MostBetween(int startLeaf, int endLeaf) =>
        _highestOfTwoLeaves[Math.Min(endLeaf, _highestOfTwoLeaves.Length - 1)] - _lowestOfLeaf[startLeaf];

    private static (double Lowest, double Highest) Reduce(Vector<double> lowest, Vector<double> highest)
    {
        double least = lowest[0], most = highest[0];
        for (var lane = 1; lane < Vector<double>.Count; lane++)
            (least, most) = (Math.Min(least, lowest[lane]), Math.Max(most, highest[lane]));
        return (least, most);
    }
}
