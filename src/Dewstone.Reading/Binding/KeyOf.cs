using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A key whose value means a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">What its value means.</typeparam>
/// <param name="name">Name as written.</param>
/// <param name="form">Form of its value.</param>
/// <param name="required">Whether it must stand.</param>
/// <param name="fallback">Default as it would be written; null for none.</param>
/// <param name="doc">What it means.</param>
/// <param name="example">A good value; null for the form's.</param>
/// <param name="starter">Whether a file to start from has it.</param>
internal sealed class KeyOf<T>(string name, FormOf<T> form, bool required, string? fallback, string doc, string? example, bool starter)
    : Key(name, required, fallback, doc, example, starter)
    where T : notnull
{
    /// <inheritdoc/>
    public override Form Form => form;

    /// <summary>The default.</summary>
    /// <returns>What the default means.</returns>
    /// <exception cref="InvalidOperationException">The key has no default, or one that its form refuses: a fault of the key table.</exception>
    public T FallbackValue()
    {
        if (Fallback is null)
        {
            throw new InvalidOperationException($"The key {Name} has no value and no default.");
        }

        DiagnosticBag findings = new();
        Spot spot = new BindingRun(Name, DescriptionKind.Unit, findings).Root(new YamlScalar(TextPlace.Start, Fallback, true));
        return form.TryBind(spot,
            out T? value) ? value : throw new InvalidOperationException($"The default of {Name}: {findings.Items[0].Message}");
    }
}
