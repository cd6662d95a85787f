using System.Reflection;

namespace RideAudit.Mutation;

/// <summary>The switch that dotnet-stryker compiled into the core: which change is in force.</summary>
internal sealed class ChangeSwitch
{
    public const int None = -1;

    private readonly FieldInfo _active;
    private readonly FieldInfo _counting;
    private readonly MethodInfo _begin;
    private readonly MethodInfo _read;

    public ChangeSwitch(Assembly core)
    {
        const BindingFlags Members = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;
        var type = core.GetTypes().Single(t => t.Name == "MutantControl");
        _active = type.GetField("ActiveMutant", Members)!;
        _counting = type.GetField("CaptureCoverage", Members)!;
        _begin = type.GetMethod("InitCoverage", Members)!;
        _read = type.GetMethod("GetCoverageData", Members)!;
        Activate(None);
    }

    public void Activate(int id) => _active.SetValue(null, id);

    public void BeginCounting()
    {
        _begin.Invoke(null, null);
        _counting.SetValue(null, true);
    }

    /// <returns>The changes that were reached since the counting began.</returns>
    public int[] EndCounting()
    {
        _counting.SetValue(null, false);
        return [.. ((IList<int>[])_read.Invoke(null, null)!).SelectMany(l => l).Distinct().Order()];
    }
}
