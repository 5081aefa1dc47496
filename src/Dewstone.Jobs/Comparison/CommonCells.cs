using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Comparison;

/// <summary>
/// Cells in the unit frame that two jobs are compared on: those of both where they stand alike, else cubes of the smaller edge over both outer boxes
/// and two layers around, each taking the value of the cell its centre lies in. Neither side is preferred.
/// </summary>
internal sealed class CommonCells
{
    private const int MarginLayers = 2;

    private readonly ComparedJob old;
    private readonly ComparedJob now;
    private readonly double edge;

    /// <summary>The cells.</summary>
    /// <param name="old">One job.</param>
    /// <param name="now">The other.</param>
    public CommonCells(ComparedJob old, ComparedJob now)
    {
        this.old = old;
        this.now = now;
        LayerMetres = Math.Min(old.Lattice.LayerMetres, now.Lattice.LayerMetres);
        SharesCells = old.Cells == now.Cells && old.Placement == now.Placement;
        edge = Math.Min(old.Cells.CellMetres, now.Cells.CellMetres);
        Size3 a = old.Placement.UnitBox, b = now.Placement.UnitBox;
        double margin = MarginLayers * LayerMetres;
        Low = new Point3(-margin, -margin, -margin);
        (Nx, Ny, Nz) = (Count(Math.Max(a.X, b.X)), Count(Math.Max(a.Y, b.Y)), Count(Math.Max(a.Z, b.Z)));
        int Count(double length) => (int)Math.Ceiling((length + 2.0 * margin) / edge - 1e-9);
    }

    /// <summary>Whether both have the same cells, so that nothing is resampled.</summary>
    public bool SharesCells { get; }

    /// <summary>The smaller layer height, metres.</summary>
    public double LayerMetres { get; }

    /// <summary>Cells along x.</summary>
    public int Nx { get; }

    /// <summary>Cells along y.</summary>
    public int Ny { get; }

    /// <summary>Cells along z.</summary>
    public int Nz { get; }

    /// <summary>Lower corner, metres, unit frame.</summary>
    public Point3 Low { get; }

    /// <summary>Volume of a cell, litres.</summary>
    public double CellLitres => (SharesCells ? old.Cells.CellCubicMetres : edge * edge * edge) * 1000.0;

    /// <summary>Visits every cell whose two values differ.</summary>
    /// <param name="before">Values of the old job's cells.</param>
    /// <param name="after">Values of the new job's.</param>
    /// <param name="visit">Told the centre, metres in the unit frame, and the change, above 0 where there is now more.</param>
    public void Differences<T>(T[] before, T[] after, Action<Point3, float> visit)
        where T : struct, IConvertible, IEquatable<T>
    {
        if (SharesCells)
        {
            CellGrid grid = old.Cells;
            for (int i = 0; i < before.Length; i++)
            {
                if (!before[i].Equals(after[i]))
                {
                    Point3 centre = grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny));
                    visit(old.Placement.ToUnit(centre), Value(after[i]) - Value(before[i]));
                }
            }

            return;
        }

        for (int z = 0; z < Nz; z++)
        {
            for (int y = 0; y < Ny; y++)
            {
                for (int x = 0; x < Nx; x++)
                {
                    Point3 centre = Low + new Point3((x + 0.5) * edge, (y + 0.5) * edge, (z + 0.5) * edge);
                    float change = At(now, after, centre) - At(old, before, centre);
                    if (change != 0f)
                    {
                        visit(centre, change);
                    }
                }
            }
        }
    }

    private static float At<T>(ComparedJob job, T[] values, Point3 unit)
        where T : struct, IConvertible => job.CellAt(unit) is var cell and >= 0 ? Value(values[cell]) : 0f;

    private static float Value<T>(T value)
        where T : struct, IConvertible => value.ToSingle(null);
}
