namespace Dewstone.Model.Results;

/// <summary>What became of the test holes of one direction.</summary>
/// <param name="Open">Drawn diameter from which a hole stays open.</param>
/// <param name="Wide">Drawn diameter from which <see cref="LimitsCard.WideShare"/> of it stays clear.</param>
/// <param name="Tried">The holes, by place, then by drawn diameter.</param>
public sealed record HoleLimits(SizeLimit Open, SizeLimit Wide, IReadOnlyList<TestHole> Tried);
