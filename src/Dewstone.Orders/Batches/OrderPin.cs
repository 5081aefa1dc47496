using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>What the folder of an order was begun with, <c>order.json</c>: whoever works on it later holds the order against it.</summary>
public sealed record OrderPin
{
    /// <summary>Name of the order.</summary>
    public required string Name { get; init; }

    /// <summary>SHA-256 of the order's file, lower-case hexadecimal.</summary>
    public required string OrderSha256 { get; init; }

    /// <summary>All other files it is made from, each once, by role, name and hash.</summary>
    public required IReadOnlyList<InputFile> Inputs { get; init; }

    /// <summary>Cells a voxel side.</summary>
    public required int Cells { get; init; }

    /// <summary>Version of the tool.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>Marks of all units, in the order of the listing.</summary>
    public required IReadOnlyList<string> Marks { get; init; }
}
