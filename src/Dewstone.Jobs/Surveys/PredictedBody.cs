using Dewstone.Compute.Numerics;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>The predicted surface in the unit frame as a scanner would see it, to lay scans on.</summary>
/// <param name="Outside">The surface, without the walls of enclosed pockets.</param>
/// <param name="Surface">The same, prepared to be searched.</param>
internal sealed record PredictedBody(OuterSurface Outside, SurveyedSurface Surface)
{
    /// <summary>Takes the surface of a prediction.</summary>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="moisture">What the water did.</param>
    /// <param name="law">Law of diffusivity.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The body; null when nothing hardens.</returns>
    public static PredictedBody? Of(UnitPlacement placement, MoistureResult moisture, WettingLaw law, Parallelism parallelism)
    {
        SurfaceMesh mesh = HardenedSurface.Of(moisture, law, parallelism).Mesh;
        if (mesh.Count == 0)
        {
            return null;
        }

        UnitSurface surface = UnitSurface.Of(mesh, moisture.Grid, placement, parallelism);
        OuterSurface outside = OuterSurface.Of(surface.Positions, surface.Triangles);
        return new PredictedBody(outside, new SurveyedSurface(outside.Positions, outside.Triangles));
    }
}
