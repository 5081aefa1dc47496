using System.Numerics;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Something to be looked at.</summary>
internal interface IScene
{
    /// <summary>Marks from here on: what has lines finer than the squares between looks, so that every pixel has to be looked at.</summary>
    const float FinelyDrawn = 64f;

    /// <summary>What is seen through a point of the picture.</summary>
    /// <param name="x">Pixels across.</param>
    /// <param name="y">Pixels down.</param>
    /// <returns>Red, green, blue, 0 to 1; last a mark of what was met, so that things of one colour are still told apart: marks differ by 0.1 or more.</returns>
    Vector4 Look(float x, float y);
}
