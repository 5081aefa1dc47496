namespace Dewstone.Compute.Geometry;

/// <summary>The simple bodies of a <see cref="PartTable"/>.</summary>
internal enum PartKind : byte
{
    /// <summary>A ball.</summary>
    Ball,

    /// <summary>An ellipsoid with axes along x, y, z.</summary>
    Ellipsoid,

    /// <summary>An upright block with rounded edges.</summary>
    Block,

    /// <summary>A round bar with ball ends, or an endless cylinder.</summary>
    Bar,

    /// <summary>A straight piece of rectangular section, or an endless one.</summary>
    Prism,
}
