using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>All doses of a job larger or smaller by one factor.</summary>
internal static class DoseScale
{
    /// <summary>Scales.</summary>
    /// <param name="doses">Doses.</param>
    /// <param name="factor">Factor, 1.</param>
    /// <returns>Doses rounded to hundredths of a millilitre; steps as they were.</returns>
    public static DosePlan Of(DosePlan doses, double factor) => new()
    {
        Lattice = doses.Lattice,
        Steps = [.. doses.Steps],
        CentiMillilitres = [.. doses.CentiMillilitres.Select(dose => (int)Math.Round(dose * factor, MidpointRounding.AwayFromZero))],
    };
}
