using Dewstone.Model.Diagnostics;

namespace Dewstone.Model.Tests.Diagnostics;

public sealed class DiagnosticCatalogueTests
{
    [Fact]
    public void All_codes_are_unique_well_formed_and_in_order()
    {
        string[] codes = [.. DiagnosticCatalogue.All.Select(k => k.Code)];
        Assert.NotEmpty(codes);
        Assert.All(codes, c => Assert.Matches("^DW[0-8][0-9]{3}$", c));
        Assert.Equal(codes.Order(StringComparer.Ordinal).Distinct(), codes);
    }

    [Fact]
    public void All_pages_say_what_why_and_what_to_do()
    {
        Assert.All(DiagnosticCatalogue.All, kind =>
        {
            Assert.False(kind.Title.EndsWith('.'), kind.Code);
            foreach (string text in new[] { kind.What, kind.Why, kind.Cure })
            {
                Assert.True(text.Length >= "Nothing to do.".Length, $"{kind.Code}: '{text}' says too little");
                Assert.True(text.TrimEnd()[^1] is '.' or ')' or '`', $"{kind.Code}: '{text}' is no sentence");
            }
        });
    }

    [Fact]
    public void Find_takes_a_code_in_any_case_and_refuses_unknown_ones()
    {
        FindingKind first = DiagnosticCatalogue.All[0];
        Assert.Same(first, DiagnosticCatalogue.Find(first.Code.ToLowerInvariant()));
        Assert.Null(DiagnosticCatalogue.Find("DW0000"));
    }
}
