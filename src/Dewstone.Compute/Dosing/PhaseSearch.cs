namespace Dewstone.Compute.Dosing;

/// <summary>
/// Finds the place within a voxel with the least objective: first the way of layering, then one axis after the other from where the unit is not moved, the
/// best at last with more solves.
/// </summary>
/// <remarks>
/// Tried in a fixed order, simplest first: straight before shifted layers; not moved, up, along x, along y; a quarter forth, a half, a quarter back. What
/// comes later is taken only when it gains more than <see cref="NoiseShare"/>. A quarter back is tried only when the other three let hope for it: one wave over
/// the voxel through them, a + b cos + c sin, gives it as not moved + half - quarter forth. The constants are found by trial on bodies of our own; no source.
/// </remarks>
public static class PhaseSearch
{
    /// <summary>Gain below which two places count as equal, share of the objective: what so few solves leave uncertain.</summary>
    public const double NoiseShare = 0.01;

    /// <summary>Solves after which a way of layering is given up when it is worse by more than a tenth.</summary>
    public const int FewLayeringSolves = 4;

    /// <summary>Solves of the ways of layering; places within a voxel begin with what these taught.</summary>
    public const int LayeringSolves = 6;

    /// <summary>Solves of every place, and of the last ones, for a unit of many cells.</summary>
    public static (int Each, int Last) FewSolves { get; } = (1, 3);

    /// <summary>The same for a unit of few cells: what its doses need to settle where the learned ones do not fit.</summary>
    public static (int Each, int Last) ManySolves { get; } = (4, 10);

    private const double HopelessShare = 0.10;
    private const int LastPlaces = 3;

    /// <summary>Searches.</summary>
    /// <param name="start">Not moved, and the way of layering to begin with.</param>
    /// <param name="mayMove">Whether the place within a voxel is free.</param>
    /// <param name="mayShiftLayers">Whether shifted layers may be taken in place of straight ones.</param>
    /// <param name="solves">Solves of every place, and of the last ones.</param>
    /// <param name="judgeLayers">
    /// Objective of a way of layering after a number of solves from plain doses, litres, where the unit is not moved; null when it does not fit so.
    /// </param>
    /// <param name="judge">Objective of a place after a number of solves, litres; null when the unit does not fit there.</param>
    /// <param name="layersAhead">Told which ways of layering will be asked for next, all of them, and after how many solves; may be null.</param>
    /// <param name="ahead">The same for places.</param>
    /// <returns>The place.</returns>
    public static GridPhase Find(
        GridPhase start, bool mayMove, bool mayShiftLayers, (int Each, int Last) solves, Func<GridPhase, int, double?> judgeLayers,
        Func<GridPhase, int, double?> judge, Action<GridPhase[], int>? layersAhead = null, Action<GridPhase[], int>? ahead = null)
    {
        ArgumentNullException.ThrowIfNull(judgeLayers);
        ArgumentNullException.ThrowIfNull(judge);
        GridPhase shifted = start with { ShiftedLayers = true };
        GridPhase unmoved = mayShiftLayers && Gains(start, shifted, judgeLayers, layersAhead) ? shifted : start;
        if (!mayMove || judge(unmoved, solves.Each) is null)
        {
            return unmoved;
        }

        var tried = new List<GridPhase> { unmoved };
        GridPhase best = unmoved;
        for (int axis = 0; axis < 3; axis++)
        {
            GridPhase origin = best;
            ahead?.Invoke([Along(1), Along(2)], solves.Each);
            if (!(Try(Along(1)) is { } forth && Try(Along(2)) is { } half && judge(origin, solves.Each) + half - forth >= judge(best, solves.Each)))
            {
                Try(Along(3));
            }

            GridPhase Along(int quarters) => axis switch
            {
                0 => origin with { Z = quarters },
                1 => origin with { X = quarters },
                _ => origin with { Y = quarters },
            };
        }

        // Sorting keeps the order of what is equal; the last places are then looked at in the order of trial.
        GridPhase[] last = [.. tried.OrderBy(phase => judge(phase, solves.Each)).Take(LastPlaces)];
        if (last.Length == 1)
        {
            return unmoved;
        }

        GridPhase[] judged = [.. tried.Where(phase => phase == unmoved || last.Contains(phase))];
        ahead?.Invoke(judged, solves.Last);
        return Best(judged, phase => judge(phase, solves.Last));

        double? Try(GridPhase phase)
        {
            double? objective = judge(phase, solves.Each);
            if (objective is not null)
            {
                tried.Add(phase);
                best = objective < (1.0 - NoiseShare) * judge(best, solves.Each) ? phase : best;
            }

            return objective;
        }
    }

    private static bool Gains(GridPhase straight, GridPhase shifted, Func<GridPhase, int, double?> judgeLayers, Action<GridPhase[], int>? ahead)
    {
        ahead?.Invoke([straight, shifted], FewLayeringSolves);
        if (judgeLayers(straight, FewLayeringSolves) is not { } few || judgeLayers(shifted, FewLayeringSolves) is not { } fewShifted)
        {
            return false;
        }

        if (fewShifted < (1.0 - HopelessShare) * few || fewShifted > (1.0 + HopelessShare) * few)
        {
            return fewShifted < few;
        }

        ahead?.Invoke([straight, shifted], LayeringSolves);
        return judgeLayers(shifted, LayeringSolves) < (1.0 - NoiseShare) * judgeLayers(straight, LayeringSolves);
    }

    private static GridPhase Best(GridPhase[] phases, Func<GridPhase, double?> judge)
    {
        GridPhase best = phases[0];
        double least = double.PositiveInfinity;
        foreach (GridPhase phase in phases)
        {
            if (judge(phase) is { } value && value < (1.0 - NoiseShare) * least)
            {
                (best, least) = (phase, value);
            }
        }

        return best;
    }
}
