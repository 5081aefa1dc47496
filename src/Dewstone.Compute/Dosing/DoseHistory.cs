using System.Globalization;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Writes down every solve and tells of it.</summary>
/// <param name="expectedSolves">Solves that are planned.</param>
/// <param name="progress">Told after each solve; may be null.</param>
internal sealed class DoseHistory(int expectedSolves, IProgress<Progress>? progress)
{
    private readonly List<DoseStep> steps = [];

    /// <summary>The solves so far.</summary>
    public IReadOnlyList<DoseStep> Steps => steps;

    /// <summary>Adds a solve.</summary>
    /// <param name="cellsPerPitch">Cells a pitch.</param>
    /// <param name="objective">Objective, litres.</param>
    /// <param name="plan">Doses judged.</param>
    /// <param name="kind">What was tried.</param>
    public void Add(int cellsPerPitch, double objective, DosePlan plan, DoseStepKind kind)
    {
        steps.Add(new DoseStep(steps.Count + 1, cellsPerPitch, objective, plan.TotalCentiMillilitres / 100.0, kind));
        string detail = string.Create(CultureInfo.InvariantCulture, $"misfit {objective:0.0} L");
        progress?.Report(new Progress("dosing", Math.Min(1.0, (double)steps.Count / expectedSolves), detail));
    }
}
