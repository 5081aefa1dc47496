using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>The cells of a field file: printer frame, metres, index order x fastest, then y, then z.</summary>
public sealed record FieldImage
{
    /// <summary>Cells along x.</summary>
    public required int Nx { get; init; }

    /// <summary>Cells along y.</summary>
    public required int Ny { get; init; }

    /// <summary>Cells along z.</summary>
    public required int Nz { get; init; }

    /// <summary>Lower corner, metres.</summary>
    public required Point3 Origin { get; init; }

    /// <summary>Cell edges, metres.</summary>
    public required Size3 Spacing { get; init; }

    /// <summary>Arrays by name: <c>byte[]</c>, <c>ushort[]</c> or <c>float[]</c>, one value a cell.</summary>
    public required IReadOnlyDictionary<string, Array> Arrays { get; init; }

    /// <summary>Numbers that explain the arrays, by name.</summary>
    public required IReadOnlyDictionary<string, double> Remarks { get; init; }

    /// <summary>An array of a certain type.</summary>
    /// <typeparam name="T">Its type: byte, ushort or float.</typeparam>
    /// <param name="name">Its name.</param>
    /// <returns>The values; null when there is none of that name and type.</returns>
    public T[]? Find<T>(string name)
        where T : unmanaged => Arrays.GetValueOrDefault(name) as T[];
}
