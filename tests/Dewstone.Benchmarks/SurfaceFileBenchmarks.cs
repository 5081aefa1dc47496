using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Writing the example block's hardened surface: what is seen on it, GLB, STL.</summary>
public class SurfaceFileBenchmarks
{
    private static readonly Parallelism One = new(1);

    private readonly CompiledJob job = CompileBenchmarks.Compiled;
    private SurfaceMesh mesh = null!;
    private ReefShape shape = null!;
    private PredictedSurface surface = null!;

    /// <summary>Corners of the surface.</summary>
    public int Corners => surface.Surface.Corners;

    /// <summary>Finds the surface.</summary>
    [GlobalSetup]
    public void Find()
    {
        shape = ReefShapeBuilder.Build(job.Description.Unit).Shape;
        mesh = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2)).Mesh;
        surface = PredictedSurface.Of(mesh, job, shape, new Parallelism(2));
    }

    /// <summary>Normals, deviations and water/cement of all corners, one thread.</summary>
    /// <returns>The surface.</returns>
    [Benchmark]
    public object LookAt() => PredictedSurface.Of(mesh, job, shape, One);

    /// <summary>GLB, one thread.</summary>
    /// <returns>Bytes written.</returns>
    [Benchmark]
    public long Glb() => GlbFile.Write(surface, "dewstone 0.1.0").Length;

    /// <summary>STL, one thread.</summary>
    /// <returns>Bytes written.</returns>
    [Benchmark]
    public long Stl() => StlFile.Write(surface.Surface, "dewstone", One).Length;
}
