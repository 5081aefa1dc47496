namespace Dewstone.Model.Results;

/// <summary>How the doses were found, and what plain doses would have given on the same cells.</summary>
public sealed record DosingSummary
{
    /// <summary>Whether the doses were corrected against the real wetting; else they are plain.</summary>
    public required bool Corrected { get; init; }

    /// <summary>Whether the job prints the rest of another after a stop; what stands for plain doses then is that job in one go.</summary>
    public bool Resumed { get; init; }

    /// <summary>The best single dose of a full voxel, to 1 mL, that plain doses are made of, mL.</summary>
    public required double PlainMillilitres { get; init; }

    /// <summary>What plain doses give.</summary>
    public required DoseFigures Plain { get; init; }

    /// <summary>What the job's doses give.</summary>
    public required DoseFigures Chosen { get; init; }

    /// <summary>Computations of the wetting it took to find the doses.</summary>
    public required int Solves { get; init; }

    /// <summary>Cells a voxel side on which the doses were last judged.</summary>
    public required int MisfitCells { get; init; }

    /// <summary>Misfit of plain doses on those cells, litres.</summary>
    public required double PlainMisfitLitres { get; init; }

    /// <summary>Misfit of the job's doses on those cells, litres.</summary>
    public required double MisfitLitres { get; init; }

    /// <summary>Fingerprint of the job whose doses they started from; null when they started anew.</summary>
    public string? LikeFingerprint { get; init; }

    /// <summary>Doses that were given, not looked for.</summary>
    /// <param name="figures">What they give.</param>
    /// <returns>A summary without solves.</returns>
    public static DosingSummary Given(DoseFigures figures) => new()
    {
        Corrected = false,
        PlainMillilitres = 0.0,
        Plain = figures,
        Chosen = figures,
        Solves = 0,
        MisfitCells = 0,
        PlainMisfitLitres = 0.0,
        MisfitLitres = 0.0,
    };
}
