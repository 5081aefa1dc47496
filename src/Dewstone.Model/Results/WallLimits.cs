namespace Dewstone.Model.Results;

/// <summary>What became of the test walls of one direction.</summary>
/// <param name="Sound">Drawn thickness from which a wall has no dry pocket.</param>
/// <param name="Tried">The walls, by place, then by drawn thickness.</param>
public sealed record WallLimits(SizeLimit Sound, IReadOnlyList<TestWall> Tried);
