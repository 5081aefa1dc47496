using System.Numerics;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Something to be looked at.</summary>
internal interface IScene
{
    /// <summary>What is seen through a point of the picture.</summary>
    /// <param name="x">Pixels across.</param>
    /// <param name="y">Pixels down.</param>
    /// <returns>Red, green, blue, 0 to 1.</returns>
    Vector3 Look(float x, float y);
}
