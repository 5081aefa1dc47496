using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>What the job comes to when what is uncertain is not as assumed.</summary>
public sealed class TrialsReport
{
    /// <summary>Trials made.</summary>
    public required int Trials { get; init; }

    /// <summary>Seed of their draws.</summary>
    public required ulong Seed { get; init; }

    /// <summary>The cells they were wetted on, coarser than the job's.</summary>
    public required CellGrid Grid { get; init; }

    /// <summary>What was varied.</summary>
    public required IReadOnlyList<TrialInput> Inputs { get; init; }

    /// <summary>The job's requirements, in its order.</summary>
    public required IReadOnlyList<TrialedRequirement> Requirements { get; init; }

    /// <summary>Trials in which each cell hardened; index order of the grid.</summary>
    public required ushort[] HardenedTrials { get; init; }

    /// <summary>Share of trials in which a cell hardened, in whole percent; 0 and 100 are kept for none and all.</summary>
    /// <param name="cell">Flat cell index.</param>
    /// <returns>0 to 100.</returns>
    public byte HardenedPercent(int cell)
    {
        int count = HardenedTrials[cell];
        return count == 0 ? (byte)0 : count == Trials ? (byte)100 : (byte)Math.Clamp((200 * count + Trials) / (2 * Trials), 1, 99);
    }

    /// <summary>Volume that hardens in some trials and not in others, cubic metres.</summary>
    public double DoubtfulCubicMetres => HardenedTrials.Count(count => count > 0 && count < Trials) * Grid.CellCubicMetres;
}
