using System.Numerics;
using System.Runtime.InteropServices;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>The hardened surface with what is to be seen on it: how far it lies from the wanted one, and how wet the mix is behind it.</summary>
internal sealed class PredictedSurface
{
    /// <summary>How deep behind the surface the water/cement is taken, metres: on the surface itself it is the threshold's everywhere.</summary>
    public const double SkinMetres = 0.01;

    /// <summary>A surface with what is seen on it.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="normals">Outward unit vector of each corner.</param>
    /// <param name="deviationMillimetres">Signed distance of each corner, mm.</param>
    /// <param name="waterCement">Water/cement behind each corner; empty when it is not told.</param>
    public PredictedSurface(UnitSurface surface, Vector3[] normals, float[] deviationMillimetres, float[] waterCement)
    {
        Surface = surface;
        Normals = normals;
        DeviationMillimetres = deviationMillimetres;
        WaterCement = waterCement;
    }

    /// <summary>The surface.</summary>
    public UnitSurface Surface { get; }

    /// <summary>Outward unit vector of each corner, unit frame: the mean of its triangles, weighted by their areas.</summary>
    public Vector3[] Normals { get; }

    /// <summary>Signed distance of each corner to the wanted surface, mm: positive where too much set, negative where some is missing.</summary>
    public float[] DeviationMillimetres { get; }

    /// <summary>Water/cement behind each corner, 1, at <see cref="SkinMetres"/>; at least that of the threshold. Empty when it is not told.</summary>
    public float[] WaterCement { get; }

    /// <summary>Looks at a mesh of the hardened solid, whole or decimated.</summary>
    /// <param name="mesh">The mesh, in the frame of the cells.</param>
    /// <param name="job">The job.</param>
    /// <param name="shape">The wanted solid.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The surface in the unit frame.</returns>
    public static PredictedSurface Of(SurfaceMesh mesh, PredictedJob job, ReefShape shape, Parallelism parallelism)
    {
        UnitSurface surface = UnitSurface.Of(mesh, job.Moisture.Grid, job.Placement, parallelism);
        Vector3[] normals = NormalsOf(surface);
        float[] deviations = new float[surface.Corners], waterCement = new float[surface.Corners];
        MoistureSample sample = new(job.Moisture);
        double ratio = job.Moisture.LiquidKilogramsPerCubicMetre / job.Moisture.BinderKilogramsPerCubicMetre;
        Stretches.Run(surface.Corners, parallelism, (first, end) =>
        {
            for (int corner = first; corner < end; corner++)
            {
                Point3 at = new(surface.Positions[3 * corner], surface.Positions[3 * corner + 1], surface.Positions[3 * corner + 2]);
                Point3 skin = new(
                    at.X - SkinMetres * normals[corner].X, at.Y - SkinMetres * normals[corner].Y, at.Z - SkinMetres * normals[corner].Z);
                deviations[corner] = (float)(1000.0 * shape.SignedDistance(at));
                waterCement[corner] = (float)(ratio * Math.Max(job.Moisture.ThresholdContent, sample.At(job.Placement.ToPrinter(skin))));
            }
        });
        return new PredictedSurface(surface, normals, deviations, waterCement);
    }

    private static Vector3[] NormalsOf(UnitSurface surface)
    {
        ReadOnlySpan<Vector3> corners = MemoryMarshal.Cast<float, Vector3>(surface.Positions);
        var normals = new Vector3[corners.Length];
        int[] triangles = surface.Triangles;
        for (int i = 0; i < triangles.Length; i += 3)
        {
            Vector3 a = corners[triangles[i]];
            Vector3 twiceArea = Vector3.Cross(corners[triangles[i + 1]] - a, corners[triangles[i + 2]] - a);
            normals[triangles[i]] += twiceArea;
            normals[triangles[i + 1]] += twiceArea;
            normals[triangles[i + 2]] += twiceArea;
        }

        for (int corner = 0; corner < normals.Length; corner++)
        {
            float length = normals[corner].Length();
            normals[corner] = length > 0f ? normals[corner] / length : Vector3.UnitZ;
        }

        return normals;
    }
}
