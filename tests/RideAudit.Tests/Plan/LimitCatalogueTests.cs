using RideAudit.Plan;

namespace RideAudit.Tests.Plan;

public class LimitCatalogueTests
{
    [Fact]
    public void Every_limit_has_a_name_of_its_own_and_a_default_within_its_range()
    {
        Assert.Equal(LimitCatalogue.All.Length, LimitCatalogue.All.Select(l => l.Name).Distinct().Count());
        Assert.All(LimitCatalogue.All, limit =>
        {
            Assert.Matches("^[a-z0-9_]+$", limit.Name);
            if (LimitCatalogue.ValueOf(new Limits(), limit.Name) is { } value)
                Assert.InRange(value, limit.Least, limit.Most);
        });
    }

    [Fact]
    public void Every_number_of_the_limits_can_be_overridden_by_name()
    {
        var numbers = typeof(Limits).GetProperties().Where(p => p.CanWrite && p.PropertyType != typeof(Type)).Select(p => p.Name);

        Assert.Equal(numbers.Count(), LimitCatalogue.All.Length);
        foreach (var limit in LimitCatalogue.All)
        {
            var value = limit.Most;
            var plan = new TrainingPlan { LimitOverrides = new TrainingPlan().LimitOverrides.Add(limit.Name, value) };
            var limits = Limits.For(Tier.High, Experience.Regular, null, plan);
            Assert.Equal(value, LimitCatalogue.ValueOf(limits, limit.Name));
            Assert.Single(LimitCatalogue.All, other =>
                LimitCatalogue.ValueOf(limits, other.Name) != LimitCatalogue.ValueOf(Limits.For(Tier.High, Experience.Regular, null, new TrainingPlan()), other.Name));
        }
    }

    [Fact]
    public void A_limit_of_an_unknown_name_is_refused()
    {
        Assert.Null(LimitCatalogue.Find("long_ride_hours"));
        Assert.Throws<ArgumentException>(() => LimitCatalogue.ValueOf(new Limits(), "long_ride_hours"));
    }
}
