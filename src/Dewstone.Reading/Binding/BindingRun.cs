using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>What is collected while one file is bound: findings and the places of values.</summary>
/// <param name="file">File as shown in findings.</param>
/// <param name="kind">Its kind.</param>
/// <param name="findings">Takes the findings.</param>
internal sealed class BindingRun(string file, DescriptionKind kind, DiagnosticBag findings)
{
    /// <summary>Places of the values met so far.</summary>
    public SourceMap Map { get; } = new(file);

    /// <summary>Findings of level error so far.</summary>
    public int ErrorCount { get; private set; }

    /// <summary>The spot of the whole file.</summary>
    /// <param name="root">Value of the whole file.</param>
    /// <returns>The spot.</returns>
    public Spot Root(YamlNode root) => new(this, root, new KeyPath(kind, ""), root.Place);

    /// <summary>Adds a finding at a place.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="key">Value concerned.</param>
    /// <param name="place">Place.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void Report(FindingKind finding, KeyPath key, TextPlace place, string message, string remedy)
    {
        ErrorCount += finding.Severity == Severity.Error ? 1 : 0;
        findings.Add(finding.At(message, remedy, key, new SourceLocation(Map.File, place.Line, place.Column)));
    }
}
