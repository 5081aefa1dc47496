using Dewstone.Model.Description;

namespace Dewstone.Orders.SitePlans;

/// <summary>How a unit is lifted, for lists.</summary>
internal static class LiftingWords
{
    /// <summary>The words.</summary>
    /// <param name="lifting">What the description says; null for nothing.</param>
    /// <returns>A phrase in plain letters.</returns>
    public static string Of(Lifting? lifting) => lifting switch
    {
        StrapLifting straps => $"{straps.Lines.Count} straps, slings at {straps.SlingAngle.Degrees:0.#} deg",
        InsertLifting inserts => $"{inserts.Points.Count} inserts, slings at {inserts.SlingAngle.Degrees:0.#} deg",
        _ => "not said",
    };
}
