using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>A needle position of the job, or beside it, with what was planned there and what the log says.</summary>
/// <param name="place">Where.</param>
/// <param name="index">Flat index in the lattice; below 0 when it lies outside of it.</param>
/// <param name="planned">Planned dose, hundredths of a millilitre.</param>
/// <param name="allowance">By how much a sound dose may differ, hundredths of a millilitre.</param>
internal sealed class LoggedPosition(HeadPlace place, int index, int planned, double allowance)
{
    private readonly List<LoggedDose> rows = [];

    /// <summary>Where.</summary>
    public HeadPlace Place { get; } = place;

    /// <summary>Flat index in the lattice; below 0 when it lies outside of it.</summary>
    public int Index { get; } = index;

    /// <summary>Planned dose, hundredths of a millilitre.</summary>
    public int Planned { get; } = planned;

    /// <summary>By how much a sound dose may differ, hundredths of a millilitre.</summary>
    public double Allowance { get; } = allowance;

    /// <summary>Its rows in the log.</summary>
    public IReadOnlyList<LoggedDose> Rows => rows;

    /// <summary>Rows that delivered anything.</summary>
    public int Doses => rows.Count(row => row.CentiMillilitres > 0);

    /// <summary>Delivered in all, hundredths of a millilitre.</summary>
    public int Delivered { get; private set; }

    /// <summary>Whether a fault of more than this position has told what happened here.</summary>
    public bool IsExplained { get; set; }

    /// <summary>Line of its first row; 0 without a row.</summary>
    public int Line => rows.Count == 0 ? 0 : rows[0].Line;

    /// <summary>Adds a row of the log.</summary>
    /// <param name="row">The row.</param>
    public void Add(LoggedDose row)
    {
        rows.Add(row);
        Delivered += row.CentiMillilitres;
    }
}
