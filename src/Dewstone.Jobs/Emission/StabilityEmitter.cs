using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>stability.csv</c>: a row for every water level, heading and phase, with all that its factors of safety are made of; what does not change
/// from row to row stands in the manifest's <c>sea</c>. Figures have six significant digits.
/// </summary>
public static class StabilityEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "stability.csv";

    /// <summary>Column names, in order.</summary>
    public const string Header =
        "level,depth_m,heading_deg,phase_deg,u_m_s,a_m_s2,flow_m_s,flow_deg,area_m2,drag_n,drag_height_m,inertia_n,lift_n,horizontal_n,submerged_n,sliding,edge_deg,weight_arm_m,lift_arm_m,overturning";

    /// <summary>The table of a report.</summary>
    /// <param name="report">How the unit stands.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(StabilityReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        CsvText csv = new(Header);
        int perLevel = report.Rows.Count / report.Levels.Count;
        for (int i = 0; i < report.Rows.Count; i++)
        {
            SeaLevel level = report.Levels[i / perLevel];
            StabilityRow row = report.Rows[i];
            csv.Text(level.Name).Figure(level.DepthMetres).Figure(row.HeadingDegrees).Figure(row.PhaseDegrees);
            csv.Figure(row.WaveSpeed).Figure(row.WaveAcceleration).Figure(row.FlowSpeed).Figure(row.FlowDegrees).Figure(row.SquareMetres);
            csv.Figure(row.DragNewtons).Figure(row.DragHeightMetres).Figure(row.InertiaNewtons).Figure(row.LiftNewtons).Figure(row.HorizontalNewtons);
            csv.Figure(row.SubmergedNewtons).Figure(row.Sliding);
            csv.Figure(row.EdgeDegrees).Figure(row.WeightArmMetres).Figure(row.LiftArmMetres).Figure(row.Overturning).EndRow();
        }

        return new EmittedFile(Path, csv.ToBytes());
    }
}
