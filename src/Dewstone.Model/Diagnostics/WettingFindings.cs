namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW3xxx: wetting and doses. Errors among them hold the job back from printing.</summary>
public static class WettingFindings
{
    private const string Bed = "exact: porosity and saturation of a bed from its loose density and grain densities";

    /// <summary>Doses above what a needle gives.</summary>
    public static FindingKind AboveMost { get; } = new(
        "DW3001", Severity.Warning, "Dose above what a needle gives",
        "Some voxels want more water than needle.most; they get the most.",
        "They stay leaner than the rest, and corners between needles may stay dry.",
        "Use a smaller pitch or layer height, ask for a lower water_cement, or raise needle.most if the pump can do it.");

    /// <summary>Doses above the pores of a voxel.</summary>
    public static FindingKind AbovePores { get; } = new(
        "DW3002", Severity.Warning, "Dose above the pores of a voxel",
        "Some voxels want more water than their pores hold at the mix's densest likely packing (loose density plus two standard deviations, or 2 % when none is given).",
        "What the pores do not take comes up around the needle and washes cement out.",
        "Ask for a lower water_cement, or use a mix with more pore space.", "", Bed);

    /// <summary>Doses below what a needle gives.</summary>
    public static FindingKind BelowLeast { get; } = new(
        "DW3003", Severity.Note, "Doses below what a needle gives",
        "Voxels at the unit's edge want less than needle.least; each gets none or the least, whichever is nearer.",
        "Thin edges come out a little short or a little full.",
        "Nothing to do; a lower needle.least gives finer edges.");

    /// <summary>Wanted water/cement above saturation.</summary>
    public static FindingKind AboveSaturation { get; } = new(
        "DW3004", Severity.Error, "Water/cement above what the bed can hold",
        "The least water_cement asked for is above the water/cement of this mix with all its pores full: porosity x liquid density / (loose density x binder share).",
        "No dose can reach it.",
        "Ask for a lower water_cement, or use a mix with less binder or more pore space.",
        "water_cement: {min: 1.0, max: 1.2, share: 95 %}", Bed);

    /// <summary>Band that keeps the dose below where dry pockets close.</summary>
    public static FindingKind LeanDose { get; } = new(
        "DW3005", Severity.Warning, "Lean dose may leave dry pockets",
        "The water_cement band keeps the dose of a full voxel below water/cement 0.50.",
        "In a reference run of an independent prototype of the same model (25 % cement, 1700 kg/m3, 50.8 mm pitch) dry pockets stayed at the corners between needles below 28 to 30 mL a voxel, which is a water/cement of 0.50 to 0.54.",
        "Raise water_cement.max, or look at the deep pockets in the plates before printing.", "", "reference run of an independent prototype of the same model; no published source");

    /// <summary>No position with water.</summary>
    public static FindingKind NoDoses { get; } = new(
        "DW3006", Severity.Error, "No voxel gets water",
        "The wanted solid fills no voxel far enough to be given the least dose.",
        "Nothing would be printed.",
        "Check the shape: openings may have removed all of it, or it is smaller than a pitch.");

    /// <summary>Water the pores refused.</summary>
    public static FindingKind WaterRefused { get; } = new(
        "DW3007", Severity.Warning, "Water the pores did not take",
        "Some doses came faster than the bed could take them while their own voxel was full.",
        "The surplus comes up around the needle: it is lost to the solid and loosens the bed.",
        "Lower the dose or the needle's flow, or use a mix with more pore space.");

    /// <summary>Water at the edge of the computed window.</summary>
    public static FindingKind WindowTouched { get; } = new(
        "DW3008", Severity.Warning, "Water reached the edge of the computed window",
        "Water came to the outermost cells of the window around the unit where there is no bin wall.",
        "The computation holds it back there, so the predicted solid is a little too wet at that side.",
        "Move the unit away from the last needle positions, or use a larger bin.");

    /// <summary>Nothing hardened.</summary>
    public static FindingKind NothingHardened { get; } = new(
        "DW3009", Severity.Error, "Nothing hardens",
        "No cell reached the water/cement at which the mix sets.",
        "The night would end with a bin of damp sand.",
        "Check hardening.water_cement, the wetting law and the doses.");

    /// <summary>Shape match below what is required.</summary>
    public static FindingKind ShapeMatchBelow { get; } = new(
        "DW3011", Severity.Error, "Predicted solid differs too much from the wanted one",
        "The overlap of the predicted and the wanted solid (intersection over union of fine cells) is below require.shape_match.",
        "Openings may be closed or walls missing although the totals look right.",
        "Look at the plates for where it differs; finer pitch, thicker features or a lower shape_match.",
        "require: {shape_match: {min: 0.80}}");

    /// <summary>Too much of the solid outside the water/cement band.</summary>
    public static FindingKind WaterCementOutside { get; } = new(
        "DW3012", Severity.Error, "Too much of the solid outside the water/cement band",
        "The share of the hardened volume whose water/cement lies between the two ends of require.water_cement is below the share asked for.",
        "Above the band it is weak and porous; below it too little cement is wetted to bind.",
        "Widen the band or lower the share if the design allows, or change pitch, mix or wall thickness.",
        "require: {water_cement: {min: 0.25, max: 0.60, share: 95 %}}");

    // DW3013 said that a requirement was not judged; it is retired.

    /// <summary>A correction that gained next to nothing.</summary>
    public static FindingKind CorrectionStalled { get; } = new(
        "DW3014", Severity.Warning, "Correction of the doses gained next to nothing",
        "The search for doses ended less than 1 % better than it began; the best doses found are used.",
        "The predicted solid is about as far from the wanted one as with doses from the drawn shape alone.",
        "Look at the plates: thicker walls, a finer pitch or a wider water_cement band give the doses room.");

    /// <summary>Wanted solid that stays loose at blocked needles.</summary>
    public static FindingKind BlockedNeedleLoss { get; } = new(
        "DW3015", Severity.Warning, "Solid lost at blocked needles",
        "Blocked needles give no water. Their neighbours give more, as far as the limits and the spreading of water allow; what is named here stays loose all the same.",
        "A dry channel runs through every layer under such a needle. It may cut a wall in two while the whole unit still looks much as drawn.",
        "Clear and calibrate the needles, leave `place` free so that the unit can be turned or moved, or judge the plates and release the finding.",
        "column,row,...,state,... / 5,7,...,blocked,...");

    /// <summary>Doses left out because they would set lumps of their own.</summary>
    public static FindingKind StrayDoses { get; } = new(
        "DW3016", Severity.Note, "Stray doses left out",
        "Some doses, for slivers of a rounded edge or of the relief, would have set lumps that hang on nothing, or little balls on the unit's skin where a needle cannot give less. They were left out and the solid predicted again; the second kind only where the match with the drawing does not suffer.",
        "A lump of one dose falls off when the unit is dug out and ends in the loose mix that is spread again.",
        "Nothing to do.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        AboveMost, AbovePores, BelowLeast, AboveSaturation, LeanDose, NoDoses, WaterRefused, WindowTouched, NothingHardened, ShapeMatchBelow,
        WaterCementOutside, CorrectionStalled, BlockedNeedleLoss, StrayDoses,
    ];
}
