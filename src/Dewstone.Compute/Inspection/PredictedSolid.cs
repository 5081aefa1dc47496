using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>The hardened solid with what several checks need of it, each computed once.</summary>
internal sealed class PredictedSolid
{
    private readonly double looseDensity;

    /// <summary>Prepares a solid.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="field">Its hardened surface.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="looseDensity">Density of the bed as spread.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public PredictedSolid(MoistureResult moisture, SolidField field, UnitPlacement placement, Density looseDensity, Parallelism parallelism)
    {
        (Moisture, Field, Placement, Threads) = (moisture, field, placement, parallelism);
        this.looseDensity = looseDensity.KilogramsPerCubicMetre;
        Pieces = Components.Label(moisture.Hardened, field.Cells, Phase.Set, Connectivity.Faces, parallelism);
        Voids = Components.Label(moisture.Hardened, field.Cells, Phase.Empty, Connectivity.Faces, parallelism);
    }

    /// <summary>What the water did.</summary>
    public MoistureResult Moisture { get; }

    /// <summary>The hardened surface.</summary>
    public SolidField Field { get; }

    /// <summary>Where the unit stands.</summary>
    public UnitPlacement Placement { get; }

    /// <summary>Threads allowed.</summary>
    public Parallelism Threads { get; }

    /// <summary>Pieces of hardened mix, joined by faces: what hangs by an edge of a cell does not hold.</summary>
    public ComponentMap Pieces { get; }

    /// <summary>Regions of loose mix, joined by faces: mix that would have to pass an edge does not get out.</summary>
    public ComponentMap Voids { get; }

    /// <summary>Mass of the mix and water in a cell.</summary>
    /// <param name="cell">Flat index.</param>
    /// <returns>Kilograms.</returns>
    public double Kilograms(int cell) =>
        (looseDensity + Moisture.VolumetricWaterContent[cell] * Moisture.LiquidKilogramsPerCubicMetre) * Field.Grid.CellCubicMetres;

    /// <summary>Centre of a cell.</summary>
    /// <param name="cell">Flat index.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 ToUnit(int cell) => Placement.ToUnit(Printer(cell));

    /// <summary>Describes pieces.</summary>
    /// <param name="map">Labels and pieces.</param>
    /// <param name="isWanted">Whether each piece is wanted, in the order of the map.</param>
    /// <returns>One for each piece of the map, in its order; null where it is not wanted.</returns>
    public SolidPiece?[] Describe(ComponentMap map, bool[] isWanted)
    {
        double[] kilograms = new double[isWanted.Length];
        Point3[] sums = new Point3[isWanted.Length];
        int cells = Array.IndexOf(isWanted, true) >= 0 ? map.Labels.Length : 0;
        for (int cell = 0; cell < cells; cell++)
        {
            int piece = map.Labels[cell] - 1;
            if (piece >= 0 && isWanted[piece])
            {
                kilograms[piece] += Kilograms(cell);
                sums[piece] += Printer(cell);
            }
        }

        var described = new SolidPiece?[isWanted.Length];
        for (int piece = 0; piece < described.Length; piece++)
        {
            Component found = map.Pieces[piece];
            described[piece] = isWanted[piece]
                ? new SolidPiece(
                    found.Cells * Field.Grid.CellCubicMetres, kilograms[piece], Placement.ToUnit(sums[piece] * (1.0 / found.Cells)), Size(found.Box))
                : null;
        }

        return described;
    }

    /// <summary>Describes all pieces of a map, heaviest first.</summary>
    /// <param name="map">Labels and pieces.</param>
    /// <param name="isWanted">Which pieces.</param>
    /// <returns>Those wanted.</returns>
    public IReadOnlyList<SolidPiece> Heaviest(ComponentMap map, bool[] isWanted) =>
        [.. Describe(map, isWanted).OfType<SolidPiece>().OrderByDescending(piece => piece.Kilograms)];

    private Size3 Size(CellBox box)
    {
        double x = (box.LastX - box.FirstX + 1) * Field.Size.Width, y = (box.LastY - box.FirstY + 1) * Field.Size.Width;
        double z = (box.LastZ - box.FirstZ + 1) * Field.Size.Height;
        return (Placement.QuarterTurns & 1) == 0 ? new Size3(x, y, z) : new Size3(y, x, z);
    }

    private Point3 Printer(int cell) =>
        Field.Grid.Centre(cell % Field.Cells.Nx, cell / Field.Cells.Nx % Field.Cells.Ny, cell / Field.Cells.Plane);
}
