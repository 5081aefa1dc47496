using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Schema;

/// <summary>The wave height designed for: a rule, or a height.</summary>
internal static class HeightForms
{
    private static readonly FormOf<DesignHeight> Rule = new WordForm<DesignHeight>(
        ("H1/10", new DesignHeight(DesignHeightRule.HighestTenth, null)),
        ("Hs", new DesignHeight(DesignHeightRule.Significant, null)),
        ("Hmax", new DesignHeight(DesignHeightRule.Greatest, null)));

    private static readonly FormOf<DesignHeight> Stated = new MappedForm<Length, DesignHeight>(
        Forms.Length("0 m", "40 m", "2.1 m"), height => new DesignHeight(DesignHeightRule.Stated, height));

    /// <summary>Rule or height.</summary>
    public static readonly FormOf<DesignHeight> Height = new EitherForm<DesignHeight>(
        node => node is YamlScalar { Text.Length: > 0 } scalar && char.IsAsciiLetter(scalar.Text[0]), Rule, Stated);

    /// <summary>A wave height designed for.</summary>
    /// <param name="Rule">Rule.</param>
    /// <param name="Stated">Height when the rule says so.</param>
    internal sealed record DesignHeight(DesignHeightRule Rule, Length? Stated);
}
