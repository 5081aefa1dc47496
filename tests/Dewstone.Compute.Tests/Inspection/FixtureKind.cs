namespace Dewstone.Compute.Tests.Inspection;

/// <summary>What a fixture of a finding is: far from it, just on the silent or on the raised side of its limit, or plainly with it.</summary>
public enum FixtureKind
{
    Far,
    JustSilent,
    JustRaised,
    Planted,
}
