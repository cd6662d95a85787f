using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace RideAudit.Figures;

/// <summary>Work on many rides at once.</summary>
internal static class AllCores
{
    /// <summary>Something of each item, in the items' order.</summary>
    /// <param name="items">Items that do not depend on each other.</param>
    /// <param name="select">Called from several threads at once, in a browser from the only one.</param>
    public static ImmutableArray<TResult> Select<T, TResult>(ImmutableArray<T> items, Func<T, TResult> select)
    {
        var results = new TResult[items.Length];
        if (OperatingSystem.IsBrowser())
            for (var i = 0; i < results.Length; i++)
                results[i] = select(items[i]);
        else
            Parallel.For(0, results.Length, i => results[i] = select(items[i]));
        return ImmutableCollectionsMarshal.AsImmutableArray(results);
    }
}
