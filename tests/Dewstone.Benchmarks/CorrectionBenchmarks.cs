using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Correcting the doses of the crossed cube, 914 mm, straight layers.</summary>
[IterationCount(3)]
public class CorrectionBenchmarks
{
    private readonly JobDescription job = Targets.Cube();
    private PlacementResult place = null!;
    private ReefShape shape = null!;

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Voxels of the window.</summary>
    public int Voxels => place.Lattice!.Count;

    /// <summary>Places the cube.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        place = Placer.Place(job, 8);
        shape = ReefShapeBuilder.Build(job.Unit).Shape;
    }

    /// <summary>From the best single dose to the rounded plan.</summary>
    /// <returns>The doses.</returns>
    [Benchmark]
    public DoseResult Correct() => DoseSolver.Solve(
        job, shape, place.Placement!, place.Lattice!, new DoseSolverOptions(), new Parallelism(Threads), null, CancellationToken.None);
}
