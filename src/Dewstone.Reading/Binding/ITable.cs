namespace Dewstone.Reading.Binding;

/// <summary>The keys of a table, without the type they make.</summary>
internal interface ITable
{
    /// <summary>What the table is called, with its article.</summary>
    string InWords { get; }

    /// <summary>All its keys, in the order they should be written.</summary>
    IReadOnlyList<Key> Keys { get; }

    /// <summary>Its ways; empty when there is one only.</summary>
    IReadOnlyList<Way> Ways { get; }

    /// <summary>Keys that belong to no way, and so may always stand.</summary>
    IEnumerable<Key> CommonKeys { get; }
}
