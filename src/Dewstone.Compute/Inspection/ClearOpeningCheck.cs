using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Holds the clear opening of every tunnel and cavity against its <c>clear</c>, and says which set shut.</summary>
internal static class ClearOpeningCheck
{
    /// <summary>Checks.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="passages">All openings, measured, in the shape's order.</param>
    /// <returns>The clear openings, a requirement for each <c>clear</c> (of a scatter its narrowest hollow), and findings DW3024 and DW3025.</returns>
    public static Checked<IReadOnlyList<ClearOpening>> Check(ReefUnit unit, IReadOnlyList<OpeningPassage> passages)
    {
        List<ClearOpening> openings = [];
        List<RequirementResult> results = [];
        List<Diagnostic> findings = [];
        for (int tunnel = 0; tunnel < unit.Tunnels.Count; tunnel++)
        {
            Judge(passages, UnitKeys.Tunnel(tunnel), unit.Tunnels[tunnel].Clear?.Metres, openings, results, findings);
        }

        for (int cavity = 0; cavity < unit.Cavities.Count; cavity++)
        {
            Judge(passages, UnitKeys.Cavity(cavity), unit.Cavities[cavity].Clear?.Metres, openings, results, findings);
        }

        return new Checked<IReadOnlyList<ClearOpening>>(openings, results, findings);
    }

    private static void Judge(
        IReadOnlyList<OpeningPassage> passages, KeyPath key, double? required, List<ClearOpening> openings, List<RequirementResult> results,
        List<Diagnostic> findings)
    {
        List<ClearOpening> own = [.. passages.Where(p => p.Clear.Key == key).Select(p => p.Clear with { RequiredMetres = required })];
        openings.AddRange(own);
        if (own.Count == 0)
        {
            return;
        }

        ClearOpening worst = own.MinBy(opening => opening.PredictedMetres)!;
        if (required is { } least)
        {
            RequirementResult result = new()
            {
                Id = RequirementIds.Clear,
                Feature = worst.Name,
                Key = key.Key("clear"),
                Quantity = "clear opening",
                Op = ">=",
                Limit = least,
                Value = worst.PredictedMetres,
                Unit = "m",
            };
            results.Add(result);
            if (!result.Met)
            {
                findings.Add(Below(worst, result));
            }

            return;
        }

        int closed = own.Count(IsShut);
        if (closed > 0)
        {
            ClearOpening first = own.First(IsShut);
            string of = own.Count > 1 ? $" {closed} of its {own.Count} hollows let" : " lets";
            findings.Add(InspectionFindings.OpeningClosed.At(
                $"\"{first.Name}\" sets shut:{of} nothing through, where {UnitKeys.Millimetres(first.WantedMetres)} was drawn{At(first)}",
                "draw it wider, or move it by half a pitch", key) with
            { Where = first.Narrowest });
        }
    }

    private static bool IsShut(ClearOpening opening) => opening.WantedMetres > 0.0 && opening.PredictedMetres <= 0.0;

    private static Diagnostic Below(ClearOpening worst, RequirementResult result) =>
        InspectionFindings.ClearBelow.At(
            $"\"{worst.Name}\" {(worst.PredictedMetres > 0.0 ? $"lets {UnitKeys.Millimetres(worst.PredictedMetres)}" : "sets shut: it lets nothing")} through{At(worst)}; {UnitKeys.Millimetres(result.Limit)} is required and {UnitKeys.Millimetres(worst.WantedMetres)} was drawn",
            $"draw it {UnitKeys.Millimetres(-result.Margin)} wider, or lower clear", result.Key) with
        { Where = worst.Narrowest };

    private static string At(ClearOpening opening) => opening.Narrowest is { } place ? $" at {Wording.Place(place)}" : "";
}
