using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Where things lie on a plate: a plan on the left, two sections one above the other on the right, legend below them, title block along the foot.</summary>
internal sealed class PlateLayout
{
    /// <summary>Pixels across.</summary>
    public const int SheetWidth = 1200;

    /// <summary>Pixels down.</summary>
    public const int SheetHeight = 900;

    /// <summary>Distance of the frame from the edge of the sheet.</summary>
    public const int Border = 14;

    /// <summary>Upper edge of the title block.</summary>
    public const int TitleTop = 822;

    /// <summary>Left edge of the column with sections and legend.</summary>
    public const int ColumnLeft = 822;

    private const int PlanLeft = 62, PlanTop = 50, PlanSide = 716;
    private const int SectionWidth = 306, SectionRoom = 588;

    /// <summary>The layout for a grid.</summary>
    /// <param name="grid">The cells.</param>
    public PlateLayout(CellGrid grid)
    {
        double x = grid.Nx * grid.CellMetres, y = grid.Ny * grid.CellMetres, z = grid.Nz * grid.CellHeightMetres;
        double scale = Math.Min(PlanSide / x, PlanSide / y);
        int planHeight = (int)Math.Round(y * scale), planWidth = (int)Math.Round(x * scale);
        Plan = new SheetMap(PlanLeft + (PlanSide - planWidth) / 2, PlanTop + (PlanSide + planHeight) / 2, scale, grid.Origin.X, grid.Origin.Y, x, y);
        double small = Math.Min(Math.Min(SectionWidth / x, SectionWidth / y), (SectionRoom - 2 * 26) / 2 / z);
        int height = (int)Math.Round(z * small);
        int first = Border + 40 + height;
        int second = first + 40 + height;
        AlongX = new SheetMap(ColumnLeft + 18 + (SectionWidth - (int)Math.Round(x * small)) / 2, first, small, grid.Origin.X, grid.Origin.Z, x, z);
        AlongY = new SheetMap(ColumnLeft + 18 + (SectionWidth - (int)Math.Round(y * small)) / 2, second, small, grid.Origin.Y, grid.Origin.Z, y, z);
        LegendTop = second + 30;
    }

    /// <summary>The plan, x by y.</summary>
    public SheetMap Plan { get; }

    /// <summary>Section A, along x: x by z.</summary>
    public SheetMap AlongX { get; }

    /// <summary>Section B, along y: y by z.</summary>
    public SheetMap AlongY { get; }

    /// <summary>Upper edge of the legend.</summary>
    public int LegendTop { get; }
}
