using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Rounds wanted volumes of all positions to what their needles deliver: within the limits, in whole steps, nothing from blocked needles or at
/// positions that are left out. Any dosing rule hands its wishes to this one place.
/// </summary>
public sealed class DoseRounder
{
    private readonly Lattice lattice;
    private readonly HeadNeedles needles;
    private readonly PumpSteps?[] pumps;
    private readonly int[] pumpOfPosition;
    private readonly DosePlan? delivered;
    private readonly bool[]? isDone;

    /// <summary>A rounder for a job.</summary>
    /// <param name="job">Mix, printer and needles.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="delivered">Holds the doses given before the job's stop, which no rounding changes; null for a print in one go.</param>
    public DoseRounder(JobDescription job, Lattice lattice, DosePlan? delivered = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        this.lattice = lattice;
        Limits = DoseLimits.Of(job, lattice);
        needles = HeadNeedles.Of(job.Printer, job.Needles);
        pumps = new PumpSteps?[needles.Columns * needles.Rows];
        for (int row = 1; row <= needles.Rows; row++)
        {
            for (int column = 1; column <= needles.Columns; column++)
            {
                pumps[(row - 1) * needles.Columns + column - 1] =
                    needles.IsBlocked(column, row) ? null : PumpSteps.Of(job.Printer.Needle, needles.State(column, row));
            }
        }

        Stations stations = Stations.Over(job.Printer);
        pumpOfPosition = new int[lattice.Columns * lattice.Rows];
        for (int j = 0; j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                StationSeat seat = stations.Seat(lattice, i, j);
                pumpOfPosition[j * lattice.Columns + i] = (seat.Row - 1) * needles.Columns + seat.Column - 1;
            }
        }

        this.delivered = delivered;
        isDone = delivered is null ? null : DoneDoses.Of(job, lattice);
    }

    /// <summary>Limits of every dose.</summary>
    public DoseLimits Limits { get; }

    /// <summary>Whether the needle over a position is blocked.</summary>
    /// <param name="index">Flat lattice index.</param>
    /// <returns>True when it gives no water; false where water was given before the stop.</returns>
    public bool IsBlocked(int index) => isDone?[index] != true && pumps[pumpOfPosition[index % pumpOfPosition.Length]] is null;

    /// <summary>The needle over a position.</summary>
    /// <param name="index">Flat lattice index.</param>
    /// <returns>Column and row in the head, from 1.</returns>
    public (int Column, int Row) Needle(int index)
    {
        int slot = pumpOfPosition[index % pumpOfPosition.Length];
        return (slot % needles.Columns + 1, slot / needles.Columns + 1);
    }

    /// <summary>State of the needle over a position.</summary>
    /// <param name="index">Flat lattice index.</param>
    /// <returns>Its condition.</returns>
    public NeedleCondition Condition(int index)
    {
        (int column, int row) = Needle(index);
        return needles.State(column, row)?.Condition ?? NeedleCondition.Ok;
    }

    /// <summary>Rounds the wishes of all positions.</summary>
    /// <param name="wantedMillilitres">Wanted volume, mL; index order of the lattice.</param>
    /// <returns>Steps and delivered volumes.</returns>
    public DosePlan Round(ReadOnlySpan<double> wantedMillilitres)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(wantedMillilitres.Length, lattice.Count, nameof(wantedMillilitres));
        var steps = new int[lattice.Count];
        var volumes = new int[lattice.Count];
        for (int index = 0; index < steps.Length; index++)
        {
            if (isDone?[index] == true)
            {
                steps[index] = delivered!.Steps[index];
                volumes[index] = delivered.CentiMillilitres[index];
            }
            else if (wantedMillilitres[index] > 0.0 && pumps[pumpOfPosition[index % pumpOfPosition.Length]] is { } pump && IsUsable(index))
            {
                steps[index] = pump.Steps(wantedMillilitres[index], Limits);
                volumes[index] = pump.CentiMillilitres(steps[index]);
            }
        }

        return new DosePlan { Lattice = lattice, Steps = steps, CentiMillilitres = volumes };
    }

    private bool IsUsable(int index)
    {
        int i = index % lattice.Columns;
        int j = index / lattice.Columns % lattice.Rows;
        return VoxelFractions.HasVoxel(lattice, i, j, index / pumpOfPosition.Length);
    }
}
