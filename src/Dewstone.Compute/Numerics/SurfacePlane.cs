namespace Dewstone.Compute.Numerics;

/// <summary>The part of <see cref="SurfaceDistance"/> that stays within a plane of constant z; one instance a thread.</summary>
/// <param name="shape">Cells along each axis.</param>
/// <param name="scan">Scan along x and y.</param>
/// <param name="squares">Squared distance of k cells along x and y.</param>
internal sealed class SurfacePlane(GridShape shape, SurfaceScan scan, float[] squares)
{
    private const int Block = 16;
    private readonly AxisSweep<float> _alongX = new(squares, shape.Nx, false);
    private readonly AxisSweep<float> _alongY = new(squares, shape.Ny, false);
    private readonly float[] _turned = new float[shape.Plane];
    private readonly float[] _straight = new float[shape.Plane];

    /// <summary>Takes one plane.</summary>
    /// <param name="field">Values of the whole grid.</param>
    /// <param name="level">Takes the plane's squared distances to crossings along x and y in this plane.</param>
    /// <param name="upright">Squared distances to crossings along z in each upright line; takes those to crossings along z anywhere.</param>
    /// <param name="start">First cell of the plane.</param>
    public void Run(float[] field, float[] level, float[] upright, int start)
    {
        Span<float> here = level.AsSpan(start, shape.Plane);
        for (int row = 0; row < shape.Plane; row += shape.Nx)
        {
            scan.Row(field.AsSpan(start + row, shape.Nx), here.Slice(row, shape.Nx));
        }

        _alongY.Run(here, 0, shape.Nx, shape.Nx);
        scan.Lines(field.AsSpan(start, shape.Plane), _straight, 0, shape.Nx, shape.Ny);
        SweepAlongX(_straight);
        for (int i = 0; i < here.Length; i++)
        {
            here[i] = Math.Min(here[i], _straight[i]);
        }

        Span<float> across = upright.AsSpan(start, shape.Plane);
        SweepAlongX(across);
        _alongY.Run(across, 0, shape.Nx, shape.Nx);
    }

    private void SweepAlongX(Span<float> plane)
    {
        Turn(plane, _turned, shape.Nx, shape.Ny);
        _alongX.Run(_turned, 0, shape.Ny, shape.Ny);
        Turn(_turned, plane, shape.Ny, shape.Nx);
    }

    // Rows become columns, block by block.
    private static void Turn(ReadOnlySpan<float> from, Span<float> to, int width, int rows)
    {
        for (int y0 = 0; y0 < rows; y0 += Block)
        {
            for (int x0 = 0; x0 < width; x0 += Block)
            {
                int yEnd = Math.Min(rows, y0 + Block), xEnd = Math.Min(width, x0 + Block);
                for (int x = x0; x < xEnd; x++)
                {
                    for (int y = y0; y < yEnd; y++)
                    {
                        to[x * rows + y] = from[y * width + x];
                    }
                }
            }
        }
    }
}
