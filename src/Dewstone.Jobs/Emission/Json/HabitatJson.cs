using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>What a unit offers as a place to live.</summary>
internal static class HabitatJson
{
    /// <summary>Writes the members into the object that is open; figures have six significant digits.</summary>
    public static void Write(Utf8JsonWriter json, HabitatReport report)
    {
        json.Figure("void_m3", report.VoidCubicMetres);
        json.Figure("refuge_m3", report.RefugeCubicMetres);
        json.Figure("sheltered_m", report.ShelteredMetres);
        json.Figure("predator_m", report.PredatorMetres);
        json.WriteNumber("hole_count", report.Holes.Count);
        json.Figure("surface_m2", report.SurfaceSquareMetres);
        json.Figure("plan_m2", report.PlanSquareMetres);
        json.Figure("rugosity", report.Rugosity);
        json.Figure("vector_ruggedness", report.VectorRuggedness);
        json.Figure("dimension", report.Dimension);
        json.Figure("share_up", report.ShareUp);
        json.Figure("share_sideways", report.ShareSideways);
        json.Figure("share_down", report.ShareDown);
        json.Figure("open_sky", report.OpenSky);
        json.Figure("cell_m", report.CellMetres);
        json.Objects("open_sky_classes", HabitatReport.SkyClasses.Zip(report.OpenSkyShares), sky =>
        {
            json.Figure("from", sky.First);
            json.Figure("share", sky.Second);
        });
        json.Objects("curve", report.Curve, point =>
        {
            json.Figure("diameter_m", point.DiameterMetres);
            json.Figure("volume_m3", point.CubicMetres);
            json.WriteBoolean("sure", point.IsSure);
        });
        json.Objects("holes", report.Holes, hole =>
        {
            json.Figure("volume_m3", hole.CubicMetres);
            json.WriteNumber("exits", hole.Exits);
            json.Figure("mouth_m", hole.MouthMetres);
            json.Figure("mouth_height_m", hole.MouthHeightMetres);
            json.Figure("depth_m", hole.DepthMetres);
        });
    }
}
