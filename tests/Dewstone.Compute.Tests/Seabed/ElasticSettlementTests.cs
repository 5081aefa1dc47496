using Dewstone.Compute.Seabed;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class ElasticSettlementTests
{
    // Elastic half space under a rigid square: q 12.5 kPa, B 1 m, nu 0.3, E 5000 kPa (handbook form, from memory).
    [Fact]
    public void Rigid_square_settles_as_in_the_handbook() => Assert.Equal(2.002e-3, ElasticSettlement.Of(12_500.0, 1.0, 5e6), 1e-6);

    // Half the load or twice the stiffness, half the settlement; a foot twice as wide under the same pressure settles twice as far.
    [Fact]
    public void Settlement_is_straight_in_pressure_width_and_softness()
    {
        double once = ElasticSettlement.Of(8e3, 0.7, 9e6);
        Assert.Equal(0.5 * once, ElasticSettlement.Of(4e3, 0.7, 9e6), 1e-15);
        Assert.Equal(0.5 * once, ElasticSettlement.Of(8e3, 0.7, 18e6), 1e-15);
        Assert.Equal(2.0 * once, ElasticSettlement.Of(8e3, 1.4, 9e6), 1e-15);
    }
}
