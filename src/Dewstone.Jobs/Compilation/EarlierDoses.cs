using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Compilation;

/// <summary>Keeps a new job close to an earlier one: the same placement, and its doses to start from.</summary>
internal static class EarlierDoses
{
    private const int LeastCells = 2;

    /// <summary>The placement of the earlier job, as a wish for the new one: its box keeps the corner it had in the bin.</summary>
    /// <param name="job">What is asked for now.</param>
    /// <param name="like">The earlier job.</param>
    /// <returns>Turn, shift and layers, all set.</returns>
    public static PlacementWish Placement(JobDescription job, EarlierJob like)
    {
        UnitPlacement before = like.Core.Placement;
        PlacementWish centred = new() { QuarterTurns = before.QuarterTurns, Shift = default(Point3), ShiftedLayers = before.ShiftedLayers };
        return Placer.Place(job, LeastCells, centred).Placement is { } now ? centred with { Shift = before.Corner - now.Corner } : centred;
    }

    /// <summary>How to look for the doses.</summary>
    /// <param name="options">How they would be looked for without the earlier job.</param>
    /// <param name="job">What is asked for now.</param>
    /// <param name="lattice">Needle positions now.</param>
    /// <param name="like">The earlier job.</param>
    /// <param name="findings">Takes DW8111 when its needles stand elsewhere.</param>
    /// <returns>The options; null with a finding.</returns>
    public static DoseSolverOptions? Options(DoseSolverOptions options, JobDescription job, Lattice lattice, EarlierJob like, DiagnosticBag findings)
    {
        Lattice before = like.Core.Lattice;
        if (!SameGrid(before, lattice))
        {
            findings.Add(JobFolderFindings.OtherGrid.At(
                $"`{like.Folder}` was made for a grid of {before.PitchMetres * 1000.0:0.###} mm and layers of {before.LayerMetres * 1000.0:0.###} mm whose needles stand at other places than this printer's",
                "leave --like out, or name the printer that job was made for",
                location: new SourceLocation(like.Folder, 0, 0)));
            return null;
        }

        var millilitres = new double[lattice.Count];
        for (int k = 0; k < Math.Min(lattice.Layers, before.Layers); k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int column = i + lattice.FirstColumn - before.FirstColumn, row = j + lattice.FirstRow - before.FirstRow;
                    if (column >= 0 && row >= 0 && column < before.Columns && row < before.Rows)
                    {
                        millilitres[lattice.Index(i, j, k)] = like.Doses.Millilitres(before.Index(column, row, k));
                    }
                }
            }
        }

        bool sameConditions = JobCoreEmitter.ConditionsOf(job).Equals(JobCoreEmitter.ConditionsOf(like.Core.Description));
        return options with
        {
            LikeMillilitres = millilitres,
            LikeShape = sameConditions ? ReefShapeBuilder.Build(like.Core.Description.Unit).Shape : null,
        };
    }

    private static bool SameGrid(Lattice a, Lattice b) =>
        a.PitchMetres.Equals(b.PitchMetres) && a.LayerMetres.Equals(b.LayerMetres) && a.OriginXMetres.Equals(b.OriginXMetres) &&
        a.OriginYMetres.Equals(b.OriginYMetres) && a.TipDepthMetres.Equals(b.TipDepthMetres) && a.UnderLayers == b.UnderLayers && a.ShiftedLayers == b.ShiftedLayers;
}
