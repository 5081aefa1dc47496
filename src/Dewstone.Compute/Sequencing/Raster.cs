using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Sequencing;

/// <summary>
/// All needle positions of a straight layer that a printer's bin has room for: origin + i x pitch along x and y, kept half a pitch from the walls.
/// Held in whole micrometres, so that counting never depends on a last bit.
/// </summary>
public sealed record Raster
{
    /// <summary>Distance between neighbouring positions, micrometres.</summary>
    public required long PitchMicrometres { get; init; }

    /// <summary>Layer height, micrometres.</summary>
    public required long LayerMicrometres { get; init; }

    /// <summary>x of position 0, micrometres.</summary>
    public required long OriginXMicrometres { get; init; }

    /// <summary>y of position 0, micrometres.</summary>
    public required long OriginYMicrometres { get; init; }

    /// <summary>First column that keeps half a pitch from the wall, from 0; above 0 only when the origin is nearer than that.</summary>
    public required int FirstColumn { get; init; }

    /// <summary>First row that keeps half a pitch from the wall, from 0.</summary>
    public required int FirstRow { get; init; }

    /// <summary>Columns counted from the origin, those before <see cref="FirstColumn"/> included; 0 when there is no room.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows counted from the origin, those before <see cref="FirstRow"/> included; 0 when there is no room.</summary>
    public required int Rows { get; init; }

    /// <summary>Whether the bin holds no position at all.</summary>
    public bool IsEmpty => Columns <= FirstColumn || Rows <= FirstRow;

    /// <summary>The raster of a printer.</summary>
    /// <param name="printer">The printer; pitch and layer height above half a micrometre.</param>
    /// <returns>Its positions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Pitch or layer height that rounds to no micrometre.</exception>
    public static Raster Over(Printer printer)
    {
        ArgumentNullException.ThrowIfNull(printer);
        long pitch = Micrometres(printer.Grid.Pitch);
        long layer = Micrometres(printer.Grid.LayerHeight);
        ArgumentOutOfRangeException.ThrowIfLessThan(pitch, 1, nameof(printer));
        ArgumentOutOfRangeException.ThrowIfLessThan(layer, 1, nameof(printer));
        long originX = Micrometres(printer.Grid.OriginX);
        long originY = Micrometres(printer.Grid.OriginY);
        return new Raster
        {
            PitchMicrometres = pitch,
            LayerMicrometres = layer,
            OriginXMicrometres = originX,
            OriginYMicrometres = originY,
            FirstColumn = First(pitch, originX),
            FirstRow = First(pitch, originY),
            Columns = Count(pitch, originX, Micrometres(printer.Bin.SizeX)),
            Rows = Count(pitch, originY, Micrometres(printer.Bin.SizeY)),
        };
    }

    /// <summary>A length in whole micrometres, halves up.</summary>
    /// <param name="length">The length.</param>
    /// <returns>Micrometres.</returns>
    public static long Micrometres(Length length) => (long)Math.Floor(length.Metres * 1e6 + 0.5);

    /// <summary>Whether a length is a whole number of micrometres (to a thousandth of one, which is what a double may blur).</summary>
    /// <param name="length">The length.</param>
    /// <returns>True when it is.</returns>
    public static bool IsWholeMicrometres(Length length)
    {
        double micrometres = length.Metres * 1e6;
        return Math.Abs(micrometres - Math.Floor(micrometres + 0.5)) < 1e-3;
    }

    private static int First(long pitch, long origin) =>
        2 * origin >= pitch ? 0 : (int)((pitch - 2 * origin + 2 * pitch - 1) / (2 * pitch));

    private static int Count(long pitch, long origin, long bin)
    {
        long room = 2 * bin - pitch - 2 * origin;
        return room < 0 ? 0 : checked((int)(room / (2 * pitch) + 1));
    }
}
