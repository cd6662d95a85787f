namespace RideAudit.Tests.Coach;

/// <summary>The same weeks with one fault each: that fault is found, and named before all else.</summary>
public sealed class FaultTests
{
    private const int Seeds = 15;
    private const int OtherSeeds = 10;

    public static TheoryData<string> Names => [.. Faults.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void One_fault_is_found_and_comes_first(string name)
    {
        var fault = Faults.All.Single(f => f.Name == name);
        Assert.All(Enumerable.Range(1, Seeds + OtherSeeds), seed =>
        {
            var findings = RiddenWeeks.Judge(fault, seed);
            var first = RiddenWeeks.Wanting(findings).FirstOrDefault();
            Assert.True((first?.Rule, first?.Verdict) == (fault.Rule, fault.Verdict), $"seed {seed}\n{RiddenWeeks.Text(findings)}");
        });
    }
}
