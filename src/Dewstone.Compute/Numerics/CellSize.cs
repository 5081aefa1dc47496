namespace Dewstone.Compute.Numerics;

/// <summary>Edges of a cell, in any one unit of length; cells are square seen from above and may be flatter or taller than wide.</summary>
/// <param name="Width">Edge along x and y, more than 0.</param>
/// <param name="Height">Edge along z, more than 0.</param>
public readonly record struct CellSize(double Width, double Height)
{
    /// <summary>Cubic cells with the cell edge as the unit of length.</summary>
    public static CellSize Unit { get; } = new(1.0, 1.0);

    /// <summary>Half the mean of the three edges: how far a surface lies before the centre of the cell behind it.</summary>
    internal double HalfMeanEdge => (2.0 * Width + Height) / 6.0;

    /// <summary>Half the longer edge: the same, never too little for a surface along the axes.</summary>
    internal double HalfLongerEdge => 0.5 * Math.Max(Width, Height);

    /// <summary>Refuses edges that are not finite lengths above 0.</summary>
    /// <param name="name">Name of the parameter, for the message.</param>
    /// <exception cref="ArgumentOutOfRangeException">An edge is not a length.</exception>
    internal void Require(string name)
    {
        if (!(Width > 0.0 && Height > 0.0 && double.IsFinite(Width) && double.IsFinite(Height)))
        {
            throw new ArgumentOutOfRangeException(name, this, "Both edges of a cell are finite lengths above 0.");
        }
    }
}
