namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW302x: what inspecting the predicted solid found.</summary>
public static class InspectionFindings
{
    private const string Practice = "common practice, no source";

    /// <summary>Pieces apart from the main one.</summary>
    public static FindingKind LoosePieces { get; } = new(
        "DW3020", Severity.Warning, "Loose pieces",
        "Hardened mix that does not hang together with the main piece; only cells that share a face count as hanging together. An error when there are more than require.loose_pieces.max allows.",
        "They fall out at dig-out or block an opening, and their binder is wasted.",
        "Look where they are: a wall may be too thin to set through, or doses spill into an opening; thicken the wall or move the opening by half a pitch.",
        "require: {loose_pieces: {max: 0}}");

    /// <summary>Tiny pieces.</summary>
    public static FindingKind Crumbs { get; } = new(
        "DW3021", Severity.Note, "Crumbs",
        "Loose pieces smaller than what the needle's least dose wets just enough to set; they are counted together and are not among the loose pieces.",
        "They come away with the loose mix and coarsen it when it is spread again.",
        "Nothing to do; sieve the loose mix before it is spread again.");

    /// <summary>A wall thinner than asked for.</summary>
    public static FindingKind ThinWall { get; } = new(
        "DW3022", Severity.Error, "Wall thinner than required",
        "A ball of the diameter require.wall.min, moved through the predicted solid, comes apart into separate regions within one piece, or leaves out a place by more than half its diameter. Rounded edges and scallops do not count.",
        "Necks break when the unit is lifted or hit by a wave.",
        "Thicken the wall there, move openings apart, or lower wall.min if the neck carries nothing.",
        "require: {wall: {min: 60 mm}}", "opening by a ball: Serra, Image analysis and mathematical morphology, 1982 (from memory)");

    /// <summary>Loose mix that cannot be got out.</summary>
    public static FindingKind TrappedMix { get; } = new(
        "DW3023", Severity.Warning, "Trapped loose mix",
        "Loose mix that a clean-out tool 25 mm across, led in from outside, does not clear: closed pockets, and what lies more than the 12.5 mm of a brush's bristles beyond where the tool comes. An error when it is more than require.trapped_mix.max.",
        "It weighs on the hook, washes out in the sea and leaves cavities filled.",
        "Open the pocket to a face, widen the way in, or give more water where dry pockets stay inside a wall.",
        "require: {trapped_mix: {max: 2 kg}}", Practice);

    /// <summary>A clear opening below what is required.</summary>
    public static FindingKind ClearBelow { get; } = new(
        "DW3024", Severity.Error, "Opening narrower than required",
        "The largest ball that gets through the tunnel, or into the cavity, in the predicted solid is smaller than its clear asks for.",
        "What should swim or flow through does not.",
        "Draw the opening wider by what is lost, let the doses be corrected, or lower clear.",
        "clear: 200 mm");

    /// <summary>An opening that sets shut.</summary>
    public static FindingKind OpeningClosed { get; } = new(
        "DW3025", Severity.Warning, "Opening sets shut",
        "An opening that was drawn open lets nothing through in the predicted solid.",
        "It keeps its loose mix and shelters nothing.",
        "Draw it wider: an opening below about two pitches sets shut with most mixes.", "", Practice);

    /// <summary>Skin outside the band.</summary>
    public static FindingKind SkinOutside { get; } = new(
        "DW3026", Severity.Warning, "Outer skin outside the water/cement band",
        "Of the outermost 10 mm of the hardened solid less lies within the band of require.water_cement than is asked of the whole.",
        "The skin is what sand and waves wear away; too lean or too wet it rubs off.",
        "Correct the doses near the surface, or allow for the loss when walls are drawn.",
        "require: {water_cement: {min: 0.25, max: 0.60, share: 95 %}}", Practice);

    /// <summary>Loose mix in a keep zone.</summary>
    public static FindingKind KeepUnset { get; } = new(
        "DW3027", Severity.Warning, "Keep zone not hardened throughout",
        "Deeper than 20 mm below the wanted surface some of a keep zone stays loose.",
        "A zone is kept solid because it carries or holds something.",
        "Give it more water (a higher water_cement.max) or a finer pitch, or look at the plates whether the place matters.", "", Practice);

    /// <summary>Loose mix at a lifting place.</summary>
    public static FindingKind LiftingUnset { get; } = new(
        "DW3028", Severity.Warning, "Lifting place not hardened throughout",
        "Deeper than 20 mm below the wanted surface some of the solid over a strap (60 mm wide, 100 mm up) or around an insert (its embedment and 50 mm of cover) stays loose. An error when it is more than 5 % of that solid.",
        "The unit hangs by these places.",
        "Move the strap or insert, give the place more water, or use another way of lifting.", "", Practice);

    /// <summary>A hollow that may trap an animal.</summary>
    public static FindingKind AnimalTrap { get; } = new(
        "DW3029", Severity.Note, "Hollow that may trap an animal",
        "A cavity whose only mouth faces up, deeper than the sheltered animal, with a clear opening between once and one and a half times its body depth: it gets in with ease and has little room to turn.",
        "What drops in at high water may not get out.",
        "Give it a second mouth, a mouth to the side, or a wider one.", "", "not confirmed by a published source");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        LoosePieces, Crumbs, ThinWall, TrappedMix, ClearBelow, OpeningClosed, SkinOutside, KeepUnset, LiftingUnset, AnimalTrap,
    ];
}
