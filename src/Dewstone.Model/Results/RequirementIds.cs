namespace Dewstone.Model.Results;

/// <summary>Ids of all requirements, the one catalogue; each is the path of its key below <c>require</c> or in the site's file, or of the feature's own key.</summary>
public static class RequirementIds
{
    /// <summary>Mass on the hook at dig-out, at most.</summary>
    public const string MaxMass = "mass.max";

    /// <summary>Least neck of the solid, at least.</summary>
    public const string MinWall = "wall.min";

    /// <summary>Share of the hardened volume within the water/cement band, at least.</summary>
    public const string WaterCementShare = "water_cement.share";

    /// <summary>Intersection over union of predicted and wanted solid, at least.</summary>
    public const string MinShapeMatch = "shape_match.min";

    /// <summary>Pieces apart from the main one, at most.</summary>
    public const string MaxLoosePieces = "loose_pieces.max";

    /// <summary>Loose mix that cannot get out, at most.</summary>
    public const string MaxTrappedMix = "trapped_mix.max";

    /// <summary>Clear opening of a tunnel or cavity, at least.</summary>
    public const string Clear = "clear";

    /// <summary>Factor of safety against sliding at the site, at least.</summary>
    public const string Sliding = "safety.sliding";

    /// <summary>Factor of safety against overturning at the site, at least.</summary>
    public const string Overturning = "safety.overturning";

    /// <summary>Factor of safety against failure of the seabed, at least.</summary>
    public const string Bearing = "safety.bearing";

    /// <summary>Water over the unit at low water, at least.</summary>
    public const string Clearance = "clearance";

    /// <summary>Height over the depth at low water, at most.</summary>
    public const string HeightShare = "permit.height_share";

    /// <summary>Depth at low water, at least.</summary>
    public const string LeastDepth = "permit.least_depth";
}
