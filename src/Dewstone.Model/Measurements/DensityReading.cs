namespace Dewstone.Model.Measurements;

/// <summary>Loose mix struck off level in a container of known volume.</summary>
/// <param name="ContainerMillilitres">Volume of the container, mL.</param>
/// <param name="MassGrams">Mass of the mix in it, g.</param>
/// <param name="Line">Line in its file, from 1.</param>
public sealed record DensityReading(double ContainerMillilitres, double MassGrams, int Line);
