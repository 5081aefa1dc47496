namespace Dewstone.Model.Diagnostics;

/// <summary>Collects findings in the order they were raised; stages check it once at their end.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> items = [];

    /// <summary>All findings so far, in order.</summary>
    public IReadOnlyList<Diagnostic> Items => items;

    /// <summary>Whether any finding is of level error and was not released.</summary>
    public bool HasErrors => items.Exists(d => d.Severity == Severity.Error && d.AcceptedBecause is null);

    /// <summary>Adds a finding.</summary>
    /// <param name="diagnostic">The finding.</param>
    public void Add(Diagnostic diagnostic) => items.Add(diagnostic);

    /// <summary>Adds findings in their order.</summary>
    /// <param name="diagnostics">The findings.</param>
    public void AddRange(IEnumerable<Diagnostic> diagnostics) => items.AddRange(diagnostics);
}
