namespace RideAudit.Held;

/// <summary>Pairs rows with columns at the least total cost.</summary>
/// <remarks>Kuhn 1955, Naval Research Logistics Quarterly 2:83, in the form with potentials (from memory); cubic in the number of rows.</remarks>
internal static class LeastCost
{
    /// <summary>The column of each row.</summary>
    /// <param name="costs">A square matrix of finite costs.</param>
    public static int[] Assign(double[,] costs)
    {
        var n = costs.GetLength(0);
        var (rowPotential, columnPotential) = (new double[n + 1], new double[n + 1]);
        var rowOf = new int[n + 1];
        for (var row = 1; row <= n; row++)
            Add(row, costs, rowPotential, columnPotential, rowOf);
        var columns = new int[n];
        for (var column = 1; column <= n; column++)
            columns[rowOf[column] - 1] = column - 1;
        return columns;
    }

    /// <summary>Finds the cheapest path from a new row to a free column, and turns the pairs along it.</summary>
    private static void Add(int row, double[,] costs, double[] rowPotential, double[] columnPotential, int[] rowOf)
    {
        var n = costs.GetLength(0);
        var least = Enumerable.Repeat(double.PositiveInfinity, n + 1).ToArray();
        var (before, seen) = (new int[n + 1], new bool[n + 1]);
        rowOf[0] = row;
        var at = 0;
        do
        {
            seen[at] = true;
            var (next, step) = (0, double.PositiveInfinity);
            for (var column = 1; column <= n; column++)
            {
                if (seen[column])
                    continue;
                var reduced = costs[rowOf[at] - 1, column - 1] - rowPotential[rowOf[at]] - columnPotential[column];
                if (reduced < least[column])
                    (least[column], before[column]) = (reduced, at);
                if (least[column] < step)
                    (step, next) = (least[column], column);
            }
            for (var column = 0; column <= n; column++)
            {
                if (seen[column])
                    (rowPotential[rowOf[column]], columnPotential[column]) = (rowPotential[rowOf[column]] + step, columnPotential[column] - step);
                else
                    least[column] -= step;
            }
            at = next;
        }
        while (rowOf[at] != 0);
        for (; at != 0; at = before[at])
            rowOf[at] = rowOf[before[at]];
    }
}
