namespace Dewstone.Model.Diagnostics;

/// <summary>One entry of the catalogue: a code with its page for <c>dewstone explain</c>. Its constants are the only makers of diagnostics.</summary>
/// <param name="Code">Stable code, <c>DW</c> and four digits; never reused.</param>
/// <param name="Severity">Usual level.</param>
/// <param name="Title">A few words, sentence case, no full stop.</param>
/// <param name="What">What it means.</param>
/// <param name="Why">Why it matters to the concrete, the printer or the sea.</param>
/// <param name="Cure">What to do.</param>
/// <param name="Example">A short example of text that raises it; empty when none helps.</param>
/// <param name="Source">Published source of the rule, or "common practice, no source", or empty for rules of the file format.</param>
public sealed record FindingKind(string Code, Severity Severity, string Title, string What, string Why, string Cure, string Example = "", string Source = "")
{
    /// <summary>A finding of this kind.</summary>
    /// <param name="message">What was found, one line.</param>
    /// <param name="remedy">What to do, one line.</param>
    /// <param name="key">Value of the description concerned.</param>
    /// <param name="location">Place in a file, when known.</param>
    /// <returns>The finding, at the usual level.</returns>
    public Diagnostic At(string message, string remedy, KeyPath? key = null, SourceLocation? location = null) =>
        new() { Code = Code, Severity = Severity, Message = message, Remedy = remedy, Key = key, Location = location };
}
