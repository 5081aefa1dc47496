namespace Dewstone.Compute.Wetting;

/// <summary>
/// Mix that has set in a layer that is still being watered: after a stop in the middle of a layer, what the first go wetted stops a window after its
/// first dose, while the second go's water still moves. Its cells are walls: nothing crosses their faces, and no dose finds room in them.
/// </summary>
/// <remarks>
/// The stepper knows no walls between cells. So set cells are emptied while the others move: a neighbour then loses rate x its potential through each
/// face it shares with one, and gets just that back after the step. The contents of set cells are kept aside and put back when their layer stops.
/// </remarks>
internal sealed class SetMix
{
    private readonly TransportStepper field;
    private readonly MoisturePotential law;
    private readonly int plane;
    private readonly bool[] isMarked;
    private readonly bool[] isSet;
    private readonly Dictionary<int, float> kept = [];
    private readonly List<(int Cell, int Level, int Upright)> border = [];
    private float[] contents = [];
    private float[] potentials = [];
    private bool isStale;

    /// <summary>Nothing set yet.</summary>
    /// <param name="field">The field that moves.</param>
    /// <param name="law">Its potential.</param>
    public SetMix(TransportStepper field, MoisturePotential law)
    {
        (this.field, this.law) = (field, law);
        plane = field.RowStride * field.Ny;
        isMarked = new bool[field.Content.Length];
        isSet = new bool[field.Content.Length];
    }

    /// <summary>Marks the cells that the first go has wetted so far.</summary>
    /// <param name="first">First plane of the layer.</param>
    /// <param name="end">Plane after its last.</param>
    /// <param name="threshold">Content at which mix sets, 1.</param>
    public void Mark(int first, int end, float threshold)
    {
        for (int cell = first * plane; cell < end * plane; cell++)
        {
            isMarked[cell] = field.Content[cell] >= threshold;
        }
    }

    /// <summary>Lets the marked cells set.</summary>
    /// <param name="first">First plane of the layer.</param>
    /// <param name="end">Plane after its last.</param>
    public void Set(int first, int end)
    {
        for (int cell = first * plane; cell < end * plane; cell++)
        {
            if (isMarked[cell])
            {
                isSet[cell] = true;
                kept[cell] = field.Content[cell];
                field.Content[cell] = 0f;
            }
        }

        isStale = true;
    }

    /// <summary>Puts the contents back below a plane: all there has stopped.</summary>
    /// <param name="end">Plane after the last that stopped.</param>
    public void Release(int end)
    {
        foreach (int cell in kept.Keys.Where(cell => cell < end * plane).ToArray())
        {
            field.Content[cell] = kept[cell];
            isSet[cell] = false;
            kept.Remove(cell);
        }

        isStale = true;
    }

    /// <summary>Says that planes began or ceased to move.</summary>
    public void Renew() => isStale = true;

    /// <summary>Fills the set cells, so that a dose finds no room in them, or empties them again.</summary>
    /// <param name="content">Content of each, 1.</param>
    public void Fill(float content)
    {
        foreach (int cell in kept.Keys)
        {
            field.Content[cell] = content;
        }
    }

    /// <summary>Notes what the neighbours of set cells are about to lose.</summary>
    public void BeforeStep()
    {
        if (isStale)
        {
            FindBorder();
        }

        for (int i = 0; i < border.Count; i++)
        {
            contents[i] = field.Content[border[i].Cell];
        }

        law.Fill(contents, potentials);
    }

    /// <summary>Gives it back.</summary>
    /// <param name="levelRate">Step over cell edge squared along x and y, times the potential's scale, 1.</param>
    /// <param name="uprightRate">The same along z.</param>
    public void AfterStep(float levelRate, float uprightRate)
    {
        for (int i = 0; i < border.Count; i++)
        {
            (int cell, int level, int upright) = border[i];
            field.Content[cell] += (level * levelRate + upright * uprightRate) * potentials[i];
            field.Touch(cell % plane / field.RowStride, cell / plane, field.Content[cell]);
        }

        Fill(0f);
    }

    // The moving cells beside set ones, with the number of faces they share with them.
    private void FindBorder()
    {
        isStale = false;
        border.Clear();
        (int first, int end) = field.Active;
        SortedSet<int> cells = [];
        int[] steps = [1, field.RowStride, plane];
        foreach (int cell in kept.Keys)
        {
            foreach (int step in steps)
            {
                foreach (int beside in (ReadOnlySpan<int>)[cell - step, cell + step])
                {
                    if (IsBeside(cell, beside, step, first, end) && !isSet[beside])
                    {
                        cells.Add(beside);
                    }
                }
            }
        }

        foreach (int cell in cells)
        {
            int Shared(int step) => (IsBeside(cell, cell - step, step, first, end) && isSet[cell - step] ? 1 : 0) + (IsBeside(cell, cell + step, step, first, end) && isSet[cell + step] ? 1 : 0);
            border.Add((cell, Shared(1) + Shared(field.RowStride), Shared(plane)));
        }

        int vectors = (cells.Count + 15) / 16 * 16;
        (contents, potentials) = (new float[vectors], new float[vectors]);
    }

    // Whether a cell a step away is its neighbour: in the same row, in the same plane, or in a plane that moves.
    private bool IsBeside(int cell, int beside, int step, int first, int end)
    {
        if (beside < first * plane || beside >= end * plane || cell < first * plane || cell >= end * plane)
        {
            return false;
        }

        return step == 1 ? beside / field.RowStride == cell / field.RowStride && beside % field.RowStride < field.Nx : step != field.RowStride || beside / plane == cell / plane;
    }
}
