using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>How a job comes out when its inputs are not as assumed.</summary>
public static class TrialsJson
{
    /// <summary>Writes the members into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="report">The trials.</param>
    public static void Write(Utf8JsonWriter json, TrialsReport report)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(report);
        json.WriteNumber("trials", report.Trials);
        json.WriteNumber("seed", report.Seed);
        json.WriteNumber("cells_per_voxel", report.Grid.CellsPerPitch);
        json.Figure("doubtful_m3", report.DoubtfulCubicMetres);
        json.Objects("inputs", report.Inputs, input =>
        {
            json.WriteString("name", input.Name);
            json.Figure("standard_deviation", input.Spread);
            json.WriteString("unit", input.Unit);
            json.WriteString("basis", input.Basis);
        });
        json.Objects("requirements", report.Requirements, requirement => Write(json, requirement, report.Trials));
    }

    private static void Write(Utf8JsonWriter json, TrialedRequirement requirement, int trials)
    {
        RequirementResult nominal = requirement.Nominal;
        json.WriteString("id", nominal.Id);
        json.WriteString("feature", nominal.Feature);
        json.WriteString("quantity", nominal.Quantity);
        json.WriteString("op", nominal.Op);
        json.Figure("limit", nominal.Limit);
        json.Figure("value", nominal.Value);
        json.Figure("unperturbed", requirement.Unperturbed);
        json.Figure("percentile_5", requirement.Percentile5);
        json.Figure("median", requirement.Median);
        json.Figure("percentile_95", requirement.Percentile95);
        json.WriteString("unit", nominal.Unit);
        json.WriteNumber("met", requirement.Met);
        json.Figure("share", (double)requirement.Met / trials);
        json.Figure("share_low", requirement.ShareLow);
        json.Figure("share_high", requirement.ShareHigh);
        json.ObjectOrNull("driver", requirement.Driver, driver =>
        {
            json.WriteString("input", driver.Input);
            json.Figure("rank_correlation", driver.RankCorrelation);
        });
    }
}
