namespace Dewstone.Reading.Binding;

/// <summary>
/// One of several ways of saying what a table is: chosen by the value of a key (<c>by: straps</c>), or by which way's first key stands.
/// </summary>
internal sealed class Way
{
    private Way(Key? selector, string? word, Key[] keys)
    {
        Selector = selector;
        Word = word;
        Keys = keys;
    }

    /// <summary>Key whose value chooses; null when the first key of the way does by standing there.</summary>
    public Key? Selector { get; }

    /// <summary>Value of the selector that chooses this way.</summary>
    public string? Word { get; }

    /// <summary>Keys of this way; those that are required are so only when it is chosen.</summary>
    public IReadOnlyList<Key> Keys { get; }

    /// <summary>A way chosen by its first key, which must be required.</summary>
    /// <param name="keys">Keys of the way.</param>
    /// <returns>The way.</returns>
    public static Way By(params Key[] keys) => new(null, null, keys);

    /// <summary>A way chosen by the value of a key.</summary>
    /// <param name="selector">The key.</param>
    /// <param name="word">Its value.</param>
    /// <param name="keys">Keys of the way.</param>
    /// <returns>The way.</returns>
    public static Way When(Key selector, string word, params Key[] keys) => new(selector, word, keys);
}
