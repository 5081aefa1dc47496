using System.Numerics;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>The predicted surface coloured by the scan's deviation; what the scan did not see is left out.</summary>
internal static class DeviationSurface
{
    /// <summary>Path of the file.</summary>
    public const string Path = "deviation.glb";

    private const double LeastReachMetres = 0.012;

    /// <summary>Writes.</summary>
    /// <param name="body">The predicted surface.</param>
    /// <param name="deviation">The scan where it lies.</param>
    /// <param name="spacingMetres">Distance between its points, metres.</param>
    /// <param name="toolVersion">Version of the tool.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(PredictedBody body, ScanDeviation deviation, double spacingMetres, string toolVersion, Parallelism parallelism)
    {
        float[] scan = new float[3 * deviation.Points.Count];
        for (int i = 0; i < deviation.Points.Count; i++)
        {
            (scan[3 * i], scan[3 * i + 1], scan[3 * i + 2]) = ((float)deviation.Points[i].X, (float)deviation.Points[i].Y, (float)deviation.Points[i].Z);
        }

        PointTree tree = new(scan);
        SurveyedSurface surface = body.Surface;
        float[] millimetres = new float[surface.Corners];
        Vector3[] normals = new Vector3[surface.Corners];
        double reach = Math.Max(LeastReachMetres, 2.0 * spacingMetres);
        Stretches.Run(surface.Corners, parallelism, (first, end) =>
        {
            for (int corner = first; corner < end; corner++)
            {
                Point3 p = surface.Corner(corner), n = surface.Normal(corner);
                normals[corner] = new Vector3((float)n.X, (float)n.Y, (float)n.Z);
                millimetres[corner] = Seen(tree, deviation, p, n, reach);
            }
        });
        int[] triangles = body.Outside.Triangles;
        List<int> seen = [];
        for (int t = 0; t < triangles.Length; t += 3)
        {
            if (!float.IsNaN(millimetres[triangles[t]] + millimetres[triangles[t + 1]] + millimetres[triangles[t + 2]]))
            {
                seen.AddRange([triangles[t], triangles[t + 1], triangles[t + 2]]);
            }
        }

        PredictedSurface coloured = new(new UnitSurface(body.Outside.Positions, [.. seen]), normals, [.. millimetres.Select(m => float.IsNaN(m) ? 0f : m)], []);
        return new EmittedFile(Path, GlbFile.Write(coloured, $"dewstone {toolVersion}"));
    }

    // Straight out and in along the direction of the corner, so that a dent deeper than the reach is still seen.
    private static float Seen(PointTree tree, ScanDeviation deviation, Point3 p, Point3 n, double reach)
    {
        int found = tree.Nearest(p.X, p.Y, p.Z, reach).Point;
        for (double off = reach; found < 0 && off <= ScanDeviation.StrayMetres / 2.0; off += reach)
        {
            Point3 outside = p + n * off, inside = p - n * off;
            int one = tree.Nearest(outside.X, outside.Y, outside.Z, reach).Point, other = tree.Nearest(inside.X, inside.Y, inside.Z, reach).Point;
            found = one >= 0 ? one : other;
        }

        return found < 0 ? float.NaN : (float)(1000.0 * deviation.Metres[found]);
    }
}
