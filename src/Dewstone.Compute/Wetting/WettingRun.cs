using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Wetting;

/// <summary>The state of one job while its water moves.</summary>
internal sealed class WettingRun
{
    /// <summary>The last step before an event may be a tenth longer than the others, 0.99 of the monotone limit: it saves many a sliver of a step.</summary>
    public const double LastStepStretch = 1.1;

    private readonly WettingProblem problem;
    private readonly TransportStepper field;
    private readonly VoxelFill fill;
    private readonly double[] refusedContents;
    private readonly float porosity;
    private readonly MoisturePotential law;
    private int frozenLayers;
    private int spreadLayers;
    private bool isAtRest;
    private int timeSteps;
    private float largest;

    /// <summary>A dry bin.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="threads">Threads, 1 or more.</param>
    public WettingRun(WettingProblem problem, int threads)
    {
        this.problem = problem;
        CellGrid grid = problem.Grid;
        law = MoisturePotential.Of(problem.Bed.Law, problem.Bed.Porosity);
        field = new TransportStepper(grid.Nx, grid.Ny, grid.Nz, grid.CellMetres, grid.CellHeightMetres, law, threads);
        fill = new VoxelFill(grid, problem.Lattice.LayerMetres - problem.Lattice.TipDepthMetres, field.RowStride);
        refusedContents = new double[problem.Lattice.Count];
        porosity = (float)problem.Bed.Porosity;
        field.SetActive(0, 0);
    }

    /// <summary>Lets an event happen.</summary>
    /// <param name="change">The event.</param>
    public void Apply(WettingEvent change)
    {
        int planes = problem.Grid.CellsPerLayer;
        switch (change.Kind)
        {
            case WettingEventKind.Spread:
                spreadLayers = Math.Max(spreadLayers, change.Layer + 1);
                break;
            case WettingEventKind.Freeze:
                frozenLayers = Math.Max(frozenLayers, change.Layer + 1);
                field.Walls?.Release(frozenLayers * planes);
                break;
            case WettingEventKind.Mark:
                field.Walls ??= new SetMix(field, law);
                field.Walls.Mark(change.Layer * planes, (change.Layer + 1) * planes, (float)problem.Bed.ThresholdContent);
                break;
            case WettingEventKind.Set:
                // Until the machine goes on nothing moves: the layers below have stopped, what lies damp around the set mix is at its window's end too.
                isAtRest = change.Seconds < problem.Schedule.ResumedSeconds;
                field.Walls!.Set(change.Layer * planes, (change.Layer + 1) * planes);
                break;
            default:
                isAtRest = false;
                Shoot(change.Station!, change.Shot);
                break;
        }

        field.SetActive((isAtRest ? spreadLayers : Math.Min(frozenLayers, spreadLayers)) * planes, spreadLayers * planes);
        field.Walls?.Renew();
        largest = Math.Max(largest, field.LargestContent());
    }

    /// <summary>Moves the water from one event to the next.</summary>
    /// <param name="from">Time of the event, s.</param>
    /// <param name="to">Time of the next, s.</param>
    /// <param name="stepsPerChoice">Steps for which a chosen length is kept.</param>
    public void Advance(double from, double to, int stepsPerChoice)
    {
        double now = from;
        double step = 0.0;
        for (int i = 0; now < to; i++)
        {
            if (i % stepsPerChoice == 0)
            {
                step = field.StableStepSeconds();
                if (double.IsPositiveInfinity(step))
                {
                    return;
                }
            }

            double left = to - now;
            bool isLast = step * LastStepStretch >= left;
            field.Step(isLast ? left : step);
            now = isLast ? to : now + step;
            timeSteps++;
        }
    }

    /// <summary>What the water did.</summary>
    /// <returns>The result; call it once, at the end.</returns>
    public MoistureResult Result()
    {
        CellGrid grid = problem.Grid;
        float[] content = field.TakeContent();
        double threshold = problem.Bed.ThresholdContent;
        byte[] hardened = new byte[content.Length];
        for (int i = 0; i < content.Length; i++)
        {
            hardened[i] = content[i] >= threshold ? (byte)1 : (byte)0;
        }

        double injected = 0.0;
        double refused = 0.0;
        List<RefusedDose> refusals = [];
        for (int i = 0; i < refusedContents.Length; i++)
        {
            injected += problem.DosesCubicMetres[i];
            if (refusedContents[i] > 0.0)
            {
                refusals.Add(new RefusedDose(i, refusedContents[i] * grid.CellCubicMetres));
                refused += refusals[^1].CubicMetres;
            }
        }

        return new MoistureResult
        {
            Grid = grid,
            VolumetricWaterContent = content,
            Hardened = hardened,
            BinderKilogramsPerCubicMetre = problem.Bed.BinderKilogramsPerCubicMetre,
            LiquidKilogramsPerCubicMetre = problem.Bed.LiquidKilogramsPerCubicMetre,
            Porosity = problem.Bed.Porosity,
            ThresholdContent = threshold,
            InjectedCubicMetres = injected - refused,
            RefusedCubicMetres = refused,
            FieldCubicMetres = FixedOrderSum.Of(content) * grid.CellCubicMetres,
            Refused = refusals,
            LargestContent = largest,
            TimeSteps = timeSteps,
            CellUpdates = field.CellUpdates,
            TouchedWindowEdge = WindowEdge.IsTouched(problem.Lattice, grid, content, (float)(WindowEdge.ReachedShare * threshold)),
        };
    }

    private void Shoot(Station station, int shot)
    {
        CellGrid grid = problem.Grid;
        Lattice lattice = problem.Lattice;
        int shift = lattice.IsShifted(station.Layer) ? grid.CellsPerPitch / 2 : 0;
        field.Walls?.Fill(porosity);
        foreach (int position in station.Positions)
        {
            double share = station.Share(shot, problem.Schedule.PumpSeconds[position]);
            int x = position % lattice.Columns * grid.CellsPerPitch + shift;
            int y = position / lattice.Columns % lattice.Rows * grid.CellsPerPitch + shift;
            double contents = problem.DosesCubicMetres[position] * share / grid.CellCubicMetres;
            refusedContents[position] += fill.Pour(field, x, y, station.Layer * grid.CellsPerLayer, contents, porosity);
        }

        field.Walls?.Fill(0f);
    }
}
