using System.Numerics;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// How far sight lines may go before they can meet a body, for each small tile of the picture: every brick that holds some of the body is laid over the
/// tiles it may cover, and the nearest counts. Where none lies, nothing is met.
/// </summary>
internal sealed class Approach
{
    /// <summary>Pixels a tile side.</summary>
    public const int Tile = 8;

    private readonly int across;
    private readonly int down;
    private readonly float[] starts;

    /// <summary>Looks at a body.</summary>
    /// <param name="bricks">Its bricks.</param>
    /// <param name="brickHeight">Height of a brick, horizontal cell edges.</param>
    /// <param name="camera">The camera.</param>
    /// <param name="foot">Bricks that end below this height do not count, horizontal cell edges.</param>
    /// <param name="top">Nor do those that begin above this.</param>
    public Approach(Bricks bricks, float brickHeight, ViewCamera camera, float foot = float.NegativeInfinity, float top = float.PositiveInfinity)
    {
        // One tile more, for points just beyond the sheet.
        across = camera.Width / Tile + 2;
        down = camera.Height / Tile + 2;
        starts = new float[across * down];
        Array.Fill(starts, float.PositiveInfinity);
        // A brick begins at a cell's centre; the outermost reach half a cell farther on each side, which is half the diagonal of a cell.
        Vector3 size = new(Bricks.Side, Bricks.Side, brickHeight), first = 0.5f * size + new Vector3(0.5f, 0.5f, 0.5f * brickHeight / Bricks.Side);
        float radius = 0.5f * size.Length() * (1f + 1f / Bricks.Side) + 0.1f, pixels = radius * camera.PixelsPerCell;
        for (int bz = 0; bz < bricks.Nz; bz++)
        {
            float middle = first.Z + bz * brickHeight;
            if (middle + brickHeight < foot || middle - brickHeight > top)
            {
                continue;
            }

            for (int by = 0; by < bricks.Ny; by++)
            {
                for (int bx = 0; bx < bricks.Nx; bx++)
                {
                    if (bricks.Distance[(bz * bricks.Ny + by) * bricks.Nx + bx] == 0)
                    {
                        Vector3 centre = first + new Vector3(bx, by, bz) * size;
                        (float x, float y) = camera.Seen(centre);
                        Lay(x, y, pixels, camera.Depth(centre) - radius);
                    }
                }
            }
        }
    }

    /// <summary>Where a sight line may begin.</summary>
    /// <param name="x">Pixels across.</param>
    /// <param name="y">Pixels down.</param>
    /// <returns>Distance from the plane through the box's middle, cells; infinite where nothing of the body lies.</returns>
    public float Start(float x, float y) => starts[(int)y / Tile * across + (int)x / Tile];

    /// <summary>Whether a tile may show something of the body.</summary>
    /// <param name="column">Tile across.</param>
    /// <param name="row">Tile down.</param>
    /// <returns>False when it does not.</returns>
    public bool Reaches(int column, int row) => !float.IsPositiveInfinity(starts[row * across + column]);

    private void Lay(float x, float y, float pixels, float start)
    {
        int left = Math.Max(0, (int)MathF.Floor((x - pixels) / Tile)), right = Math.Min(across - 1, (int)MathF.Floor((x + pixels) / Tile));
        int top = Math.Max(0, (int)MathF.Floor((y - pixels) / Tile)), bottom = Math.Min(down - 1, (int)MathF.Floor((y + pixels) / Tile));
        for (int row = top; row <= bottom; row++)
        {
            foreach (ref float there in starts.AsSpan(row * across + left, Math.Max(0, right - left + 1)))
            {
                there = Math.Min(there, start);
            }
        }
    }
}
