namespace Dewstone.Reading.Binding;

/// <summary>One key of a table: its name, form, default and meaning. Reader, JSON Schema, template and documents are all made from it.</summary>
/// <param name="name">Name as written.</param>
/// <param name="required">Whether it must stand; in a way of a table, whenever that way is chosen.</param>
/// <param name="fallback">Default as it would be written; null for none.</param>
/// <param name="doc">What it means: a few words, no full stop.</param>
/// <param name="example">A good value as YAML in one line; null for the form's.</param>
/// <param name="starter">Whether a file to start from has it, although it may be left out.</param>
internal abstract class Key(string name, bool required, string? fallback, string doc, string? example, bool starter)
{
    /// <summary>Name as written.</summary>
    public string Name => name;

    /// <summary>Whether it must stand.</summary>
    public bool Required => required;

    /// <summary>Default as it would be written; null for none.</summary>
    public string? Fallback => fallback;

    /// <summary>What it means.</summary>
    public string Doc => doc;

    /// <summary>A good value as YAML in one line.</summary>
    public string Example => example ?? Form.Example;

    /// <summary>Whether the example is this key's own, not that of its form.</summary>
    public bool HasOwnExample => example is not null;

    /// <summary>Whether a file to start from has it.</summary>
    public bool Starter => required || starter;

    /// <summary>Form of its value.</summary>
    public abstract Form Form { get; }

    /// <summary>A key that must stand.</summary>
    /// <typeparam name="T">What its value means.</typeparam>
    /// <param name="name">Name as written.</param>
    /// <param name="form">Form of its value.</param>
    /// <param name="doc">What it means.</param>
    /// <param name="example">A good value; null for the form's.</param>
    /// <returns>The key.</returns>
    public static KeyOf<T> Must<T>(string name, FormOf<T> form, string doc, string? example = null)
        where T : notnull => new(name, form, true, null, doc, example, true);

    /// <summary>A key that may stand.</summary>
    /// <typeparam name="T">What its value means.</typeparam>
    /// <param name="name">Name as written.</param>
    /// <param name="form">Form of its value.</param>
    /// <param name="doc">What it means.</param>
    /// <param name="example">A good value; null for the form's.</param>
    /// <param name="fallback">Default as it would be written; null when absence means something of its own.</param>
    /// <param name="starter">Whether a file to start from has it all the same.</param>
    /// <returns>The key.</returns>
    public static KeyOf<T> May<T>(string name, FormOf<T> form, string doc, string? example = null, string? fallback = null,
        bool starter = false)
        where T : notnull => new(name, form, false, fallback, doc, example, starter);
}
