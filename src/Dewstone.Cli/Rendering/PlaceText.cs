using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>Where the unit stands in the bin, in words.</summary>
internal static class PlaceText
{
    /// <summary>The words.</summary>
    /// <param name="job">The job.</param>
    /// <returns>For instance <c>centred, shifted layers (shifted layers match better; 7 places tried)</c>.</returns>
    public static string Of(CompiledJob job)
    {
        PlacementWish wish = job.Registration.Wish;
        Point3 shift = wish.Shift ?? default;
        string turn = wish.QuarterTurns is > 0 and { } turns ? $"turned {90 * turns} deg, " : "";
        string moved = shift == default ? "centred" : $"moved by {shift.X * 1000.0:0.#}, {shift.Y * 1000.0:0.#}, {shift.Z * 1000.0:0.#} mm";
        string layers = job.Lattice.ShiftedLayers ? "shifted layers" : "straight layers";
        string[] why =
        [
            .. RegistrationJson.Reasons(job.Registration),
            .. job.Registration.Fixed ? ["fixed"] : job.Registration.Trials.Count > 1 ? new[] { $"best of {job.Registration.Trials.Count} tried" } : [],
        ];
        return $"{turn}{moved}, {layers}{(why.Length == 0 ? "" : $" ({string.Join("; ", why)})")}";
    }
}
