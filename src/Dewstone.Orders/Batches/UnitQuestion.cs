using Dewstone.Model.Description;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>A unit to solve: one draw of one unit of the order, for the printer it is planned for.</summary>
/// <param name="Read">Its description as drawn, with the real printer; where its values stand is this run's.</param>
/// <param name="Wish">Where it stands, no member free.</param>
/// <param name="Covered">Whether something in its bin stands higher.</param>
/// <param name="Cells">Cells a voxel side.</param>
/// <param name="ToolVersion">Version of the tool.</param>
public sealed record UnitQuestion(ReadResult Read, PlacementWish Wish, bool Covered, int Cells, string ToolVersion)
{
    /// <summary>The description.</summary>
    public JobDescription Job => Read.Job ?? throw new InvalidOperationException("A unit that could not be read is not solved.");
}
