namespace Dewstone.Model.Results;

/// <summary>What a volume of cement and water, sealed, is made of as the cement hydrates; shares of the volume they were mixed to, in sum 1.</summary>
/// <param name="UnhydratedCement">Cement not hydrated.</param>
/// <param name="GelSolids">Solids of the gel.</param>
/// <param name="GelWater">Water held in the gel.</param>
/// <param name="CapillaryWater">Water that is left free.</param>
/// <param name="Shrinkage">Empty pores that chemical shrinkage leaves.</param>
public sealed record PasteVolumes(double UnhydratedCement, double GelSolids, double GelWater, double CapillaryWater, double Shrinkage);
