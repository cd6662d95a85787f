using RideAudit.Plan;
using RideAudit.Rules;

namespace RideAudit.Tests.Plan;

public class RuleIdsTests
{
    [Fact]
    public void Every_rule_can_be_named_in_a_rider_file_in_the_order_of_the_method() =>
        Assert.Equal(RuleBook.Standard.All.Select(r => r.Id), RuleIds.All.Where(id => RuleBook.Standard.All.Any(r => r.Id == id)));
}
