using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>
/// Every finding about the predicted solid, its size and its mass is tried four ways: far from its limit, plainly beyond it, and just on either side.
/// </summary>
public sealed class FindingFixtureTests
{
    // All of inspection, and what is judged beside it: water, hardening, match, band, blocked needles, masses, and whether the unit fits the bin.
    private static readonly string[] Beside = ["DW3007", "DW3008", "DW3009", "DW3011", "DW3012", "DW3015", "DW4002", "DW4003", "DW5001", "DW5002"];

    public static TheoryData<string> Codes => [.. InspectionFindings.All.Select(kind => kind.Code).Concat(Beside).Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_code_has_its_fixtures_and_none_is_left_over() =>
        Assert.Equal(Codes.Select(row => row.Data), FindingFixtures.ByCode.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_is_raised_beyond_its_limit_and_only_there(string code)
    {
        Func<FixtureKind, IEnumerable<Diagnostic>> find = FindingFixtures.ByCode[code];
        foreach (FixtureKind kind in Enum.GetValues<FixtureKind>())
        {
            Diagnostic[] found = [.. find(kind).Where(finding => finding.Code == code)];

            Assert.True(found.Length == (kind is FixtureKind.JustRaised or FixtureKind.Planted ? 1 : 0), $"{kind}: {found.Length} of {code}");
            Assert.All(found, finding => Assert.NotEmpty(finding.Remedy));
        }
    }
}
