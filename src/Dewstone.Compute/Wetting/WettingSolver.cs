using Dewstone.Model.Results;

namespace Dewstone.Compute.Wetting;

/// <summary>Where the water of a job goes, layer by layer on a growing bed, until each layer's window ends.</summary>
/// <remarks>
/// <para>Model: d theta/dt = div(D(theta) grad theta) in the cells that exist and still move (see <see cref="TransportStepper"/>). A layer's
/// cells exist from the end of its spreading. Each dose fills its own voxel from the tip (see <see cref="VoxelFill"/>) in four shots over its
/// pump time (see <see cref="Station"/>). A layer's clock starts at its first dose and its water stops exactly one window later; a layer
/// without a dose shares the clock of the next dosed layer above. Of a layer in two goes (a stop in its middle) what the first go wetted stops
/// a window after that go's first dose and is a wall from then on (see <see cref="SetMix"/>); the rest goes by the second go's clock. Cells at or above the threshold then are hardened.</para>
/// <para>Nothing crosses the bin's floor and walls, the free surface, a layer that has stopped, and the sides of the window. Do not use it
/// where the mix takes up a notable share of the water by hydration within the window, or where the wetted bed slumps.</para>
/// <para>No published diffusivity of a loose dry bed of cement and sand is known to us: the constants of a mix are fitted, not measured,
/// until it is calibrated.</para>
/// </remarks>
public static class WettingSolver
{
    /// <summary>A step is chosen at each event and then every fourth time: the largest content falls slowly, so this costs 1 % more steps.</summary>
    public const int StepsPerChoice = 4;

    /// <summary>Equal slices of a station's time in whose middles water is given.</summary>
    public const int ShotsPerStation = Station.Shots;

    /// <summary>Share of the largest monotone time step that is taken, 1.</summary>
    public const double StepShare = TransportStepper.StepShare;

    /// <summary>How much longer than the others the last step before an event may be, 1.</summary>
    public const double LastStepStretch = WettingRun.LastStepStretch;

    /// <summary>Solves a job.</summary>
    /// <param name="problem">The job.</param>
    /// <param name="parallelism">Threads; no bit of the result depends on them.</param>
    /// <param name="progress">Told after each event; may be null.</param>
    /// <param name="cancellationToken">Looked at after each event.</param>
    /// <returns>The moisture of every cell when its layer stopped. Cells in index order of the grid.</returns>
    /// <exception cref="ArgumentException">Arrays that do not fit the lattice, times out of order, a dose that is negative or no number, or a dose
    /// whose voxel reaches over the window.</exception>
    public static MoistureResult Solve(
        WettingProblem problem, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(problem);
        WettingInputs.Demand(problem);
        WettingRun run = new(problem, Math.Max(1, parallelism.Threads));
        List<WettingEvent> events = WettingEvent.Of(problem);
        for (int i = 0; i < events.Count; i++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            run.Apply(events[i]);
            if (i + 1 < events.Count)
            {
                run.Advance(events[i].Seconds, events[i + 1].Seconds, StepsPerChoice);
            }

            progress?.Report(new Progress("wetting", (i + 1.0) / events.Count));
        }

        return run.Result();
    }
}
