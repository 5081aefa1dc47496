using Google.OrTools.Sat;

namespace Dewstone.Orders.Packing;

/// <summary>Decides whether units fit in a bin together: footprints enlarged by the gap must not overlap, solved with CP-SAT on one worker and a fixed seed.</summary>
internal static class ExactPacking
{
    /// <summary>Packs.</summary>
    /// <param name="space">The bin.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="counts">Units of each.</param>
    /// <param name="effort">Limit of the solver's deterministic time.</param>
    /// <returns>Places by kind, null when there are none or none was found, and whether that is proved.</returns>
    public static (IReadOnlyList<PackedPlace>? Places, bool Proved) Pack(BinSpace space, IReadOnlyList<PackedKind> kinds, IReadOnlyList<int> counts, double effort)
    {
        CpModel model = new();
        NoOverlap2dConstraint apart = model.AddNoOverlap2D();
        List<(int Kind, BoolVar? Turned, IntVar Column, IntVar Row)> units = [];
        List<IntervalVar> across = [], along = [];
        List<int> columns = [], rows = [];
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            for (int unit = 0; unit < counts[kind]; unit++)
            {
                Add(kind, isFirst: unit == 0);
            }
        }

        // What stands beside a line through the bin must fit across it, which prunes far more than the pairs do.
        CumulativeConstraint byColumn = model.AddCumulative(space.Rows + space.Gap), byRow = model.AddCumulative(space.Columns + space.Gap);
        bool anyTurns = units.Exists(unit => unit.Turned is not null);
        for (int unit = 0; unit < units.Count && !anyTurns; unit++)
        {
            byColumn.AddDemand(across[unit], rows[unit] + space.Gap);
            byRow.AddDemand(along[unit], columns[unit] + space.Gap);
        }

        using CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}") };
        CpSolverStatus status = solver.Solve(model);
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible =>
                ([.. units.Select(u => new PackedPlace(u.Kind, u.Turned is { } turned && solver.BooleanValue(turned), (int)solver.Value(u.Column), (int)solver.Value(u.Row)))], true),
            CpSolverStatus.Infeasible => (null, true),
            CpSolverStatus.Unknown => (null, false),
            _ => throw new InvalidOperationException($"The packing model is not valid: {model.Validate()}"),
        };

        void Add(int kind, bool isFirst)
        {
            int width = kinds[kind].Columns, depth = kinds[kind].Rows;
            bool mayTurn = space.MayTurn && width != depth;
            (int firstColumn, int lastColumn) = space.Range(space.Columns, width);
            (int firstRow, int lastRow) = space.Range(space.Rows, depth);
            (int turnedFirstColumn, int turnedLastColumn) = space.Range(space.Columns, depth);
            (int turnedFirstRow, int turnedLastRow) = space.Range(space.Rows, width);
            IntVar column = model.NewIntVar(0, space.Columns, ""), row = model.NewIntVar(0, space.Rows, "");
            BoolVar? turned = mayTurn ? model.NewBoolVar("") : null;
            IntervalVar x, y;
            if (turned is null)
            {
                model.AddLinearConstraint(column, firstColumn, lastColumn);
                model.AddLinearConstraint(row, firstRow, lastRow);
                x = model.NewFixedSizeIntervalVar(column, width + space.Gap, "");
                y = model.NewFixedSizeIntervalVar(row, depth + space.Gap, "");
            }
            else
            {
                model.AddLinearConstraint(column, firstColumn, lastColumn).OnlyEnforceIf(turned.Not());
                model.AddLinearConstraint(row, firstRow, lastRow).OnlyEnforceIf(turned.Not());
                model.AddLinearConstraint(column, turnedFirstColumn, turnedLastColumn).OnlyEnforceIf(turned);
                model.AddLinearConstraint(row, turnedFirstRow, turnedLastRow).OnlyEnforceIf(turned);
                LinearExpr sizeX = width + space.Gap + (depth - width) * turned, sizeY = depth + space.Gap + (width - depth) * turned;
                x = model.NewIntervalVar(column, sizeX, model.NewIntVar(0, space.Columns + space.Gap, ""), "");
                y = model.NewIntervalVar(row, sizeY, model.NewIntVar(0, space.Rows + space.Gap, ""), "");
            }

            apart.AddRectangle(x, y);
            if (!isFirst)
            {
                // Units of a kind are alike: take them in order of place.
                model.Add(units[^1].Column * (space.Rows + 1) + units[^1].Row <= column * (space.Rows + 1) + row);
            }

            units.Add((kind, turned, column, row));
            across.Add(x);
            along.Add(y);
            columns.Add(width);
            rows.Add(depth);
        }
    }
}
