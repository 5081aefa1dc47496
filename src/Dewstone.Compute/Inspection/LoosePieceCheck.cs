using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Finds pieces of hardened mix apart from the largest, and judges <c>require.loose_pieces</c>.</summary>
/// <remarks>
/// Cells hang together by faces only: an edge or a corner carries nothing. A piece smaller than the needle's least dose wets just enough to set is a
/// crumb, the fringe of a neighbour's dose; crumbs are counted together and are none of the loose pieces.
/// </remarks>
internal static class LoosePieceCheck
{
    /// <summary>Checks.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="solid">Predicted solid.</param>
    /// <returns>The pieces, the requirement, and findings DW3020 and DW3021.</returns>
    public static Checked<LoosePiecesReport> Check(JobDescription job, PredictedSolid solid)
    {
        double crumb = Crumb(job.Printer.Needle, solid.Moisture);
        IReadOnlyList<Component> found = solid.Pieces.Pieces;
        int main = Largest(found);
        bool[] apart = new bool[found.Count];
        for (int piece = 0; piece < apart.Length; piece++)
        {
            apart[piece] = piece != main;
        }

        IReadOnlyList<SolidPiece> all = solid.Heaviest(solid.Pieces, apart);
        List<SolidPiece> pieces = [.. all.Where(piece => piece.CubicMetres >= crumb)], crumbs = [.. all.Where(piece => piece.CubicMetres < crumb)];
        LoosePiecesReport report = new(pieces, crumbs.Count, crumbs.Sum(piece => piece.Kilograms), crumb);
        List<RequirementResult> results = [];
        List<Diagnostic> findings = [];
        if (job.Unit.Require.MaxLoosePieces is { } most)
        {
            results.Add(new RequirementResult
            {
                Id = RequirementIds.MaxLoosePieces, Key = Wording.Require("loose_pieces.max"), Quantity = "loose pieces, crumbs not counted",
                Op = "<=", Limit = most, Value = pieces.Count, Unit = "1",
            });
        }

        bool isError = results.Count > 0 && !results[0].Met;
        if (isError || (pieces.Count > 0 && results.Count == 0))
        {
            findings.Add(InspectionFindings.LoosePieces.At(
                $"{pieces.Count} loose {(pieces.Count == 1 ? "piece" : "pieces")}: {Wording.Pieces(pieces)}",
                "thicken the wall it should hang by, or move the opening beside it by half a pitch",
                isError ? results[0].Key : new KeyPath(DescriptionKind.Unit, "box")) with
            {
                Severity = isError ? Severity.Error : Severity.Warning, Where = pieces[0].Centre,
            });
        }

        if (crumbs.Count > 0)
        {
            findings.Add(InspectionFindings.Crumbs.At(
                $"{crumbs.Count} crumbs of hardened mix below {crumb * 1e6:0.#} mL, {report.CrumbKilograms:0.###} kg together",
                "sieve the loose mix before it is spread again", new KeyPath(DescriptionKind.Unit, "box")) with { Where = crumbs[0].Centre });
        }

        return new Checked<LoosePiecesReport>(report, results, findings);
    }

    /// <summary>Volume below which a piece is a crumb.</summary>
    /// <param name="needle">Its least dose.</param>
    /// <param name="moisture">Content at which the mix sets.</param>
    /// <returns>Cubic metres.</returns>
    public static double Crumb(Needle needle, MoistureResult moisture) => needle.Least.CubicMetres / moisture.ThresholdContent;

    private static int Largest(IReadOnlyList<Component> pieces)
    {
        int largest = 0;
        for (int piece = 1; piece < pieces.Count; piece++)
        {
            largest = pieces[piece].Cells > pieces[largest].Cells ? piece : largest;
        }

        return largest;
    }
}
