using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Where the solid is doubtful: plans of the layers in which the trials differ most, lowest first, each at its most doubtful height.</summary>
/// <remarks>The doubt of a cell that a share p of the trials hardens is 4 p (1 - p): 0 when all agree, 1 when half do.</remarks>
internal static class DoubtPicture
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "doubt.png";

    private const int Across = 3, Down = 2, Side = 366, Gap = 20, Head = 24;

    /// <summary>Draws it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="trials">Its trials.</param>
    /// <returns>The sheet.</returns>
    public static Canvas Draw(PredictedJob job, TrialsReport trials)
    {
        CellGrid grid = trials.Grid;
        double x = grid.Nx * grid.CellMetres, y = grid.Ny * grid.CellMetres, scale = Math.Min(Side / x, Side / y);
        int step = (int)Math.Round(y * scale) + Head + Gap;
        Canvas canvas = new(PlateLayout.SheetWidth, Down * step + 2 * Gap + 70);
        int[] planes = MostDoubtful(trials);
        for (int i = 0; i < planes.Length; i++)
        {
            int left = Gap + i % Across * (Side + Gap) + (Side - (int)Math.Round(x * scale)) / 2, bottom = Gap + (i / Across + 1) * step - Gap;
            SheetMap map = new(left, bottom, scale, grid.Origin.X, grid.Origin.Y, x, y);
            double height = grid.Centre(0, 0, planes[i]).Z;
            Tone(canvas, map, trials, planes[i]);
            Outline(canvas, map, job.Target, height);
            string text = $"layer {planes[i] / grid.CellsPerLayer + 1} of {job.Lattice.Layers}, z {height * 1000.0:0} mm in the bin";
            Lettering.Small.Write(canvas, text, left, map.Top - 8f, Ink.Line);
        }

        Foot(canvas, job, trials);
        return canvas;
    }

    // The most doubtful plane of each of the most doubtful layers, lowest first; the lower of equals.
    private static int[] MostDoubtful(TrialsReport trials)
    {
        CellGrid grid = trials.Grid;
        double[] doubt = [.. Enumerable.Range(0, grid.Nz).Select(plane => Doubt(trials, plane))];
        return
        [
            .. Enumerable.Range(0, grid.Nz).GroupBy(plane => plane / grid.CellsPerLayer)
                .OrderByDescending(layer => layer.Sum(plane => doubt[plane])).Take(Across * Down)
                .Select(layer => layer.MaxBy(plane => doubt[plane])).Order(),
        ];
    }

    private static double Doubt(TrialsReport trials, int plane)
    {
        int cells = trials.Grid.Nx * trials.Grid.Ny;
        long sum = 0;
        foreach (ushort count in trials.HardenedTrials.AsSpan(plane * cells, cells))
        {
            sum += (long)count * (trials.Trials - count);
        }

        return sum;
    }

    private static void Tone(Canvas canvas, in SheetMap map, TrialsReport trials, int plane)
    {
        CellGrid grid = trials.Grid;
        for (int j = 0; j < map.Height; j++)
        {
            int row = (plane * grid.Ny + Math.Min(grid.Ny - 1, (int)((map.Height - j - 0.5) * grid.Ny / map.Height))) * grid.Nx;
            for (int i = 0; i < map.Width; i++)
            {
                int cell = row + Math.Min(grid.Nx - 1, (int)((i + 0.5) * grid.Nx / map.Width));
                canvas.Pixels[((int)map.Top + j) * canvas.Width + (int)map.Left + i] = InkOf((float)trials.HardenedTrials[cell] / trials.Trials);
            }
        }
    }

    private static Rgb24 InkOf(float share) => Ink.Mix(share >= 0.5f ? Ink.Solid : Ink.Paper, Ink.Excess, 4f * share * (1f - share));

    private static void Outline(Canvas canvas, in SheetMap map, TargetField target, double zMetres)
    {
        CellGrid grid = target.Grid;
        int plane = Math.Clamp((int)((zMetres - grid.Origin.Z) / grid.CellHeightMetres), 0, grid.Nz - 1), cells = grid.Nx * grid.Ny;
        float[] level = Array.ConvertAll(target.Fraction[(plane * cells)..((plane + 1) * cells)], fraction => fraction - 0.5f);
        float perX = map.Width / (float)grid.Nx, perY = map.Height / (float)grid.Ny;
        foreach (LevelLine.Segment line in LevelLine.Of(level, grid.Nx, grid.Ny))
        {
            canvas.Line(
                map.Left + (line.X0 + 0.5f) * perX, map.Bottom - (line.Y0 + 0.5f) * perY,
                map.Left + (line.X1 + 0.5f) * perX, map.Bottom - (line.Y1 + 0.5f) * perY, 1.2f, Ink.Line);
        }
    }

    private static void Foot(Canvas canvas, PredictedJob job, TrialsReport trials)
    {
        const int Left = Gap + 8, Step = 230;
        int top = canvas.Height - 70;
        (float Share, string Says)[] tones = [(0f, "loose in all trials"), (0.15f, "sets in 15 of 100"), (0.5f, "in half of them"), (0.85f, "in 85 of 100"), (1f, "sets in all")];
        for (int i = 0; i < tones.Length; i++)
        {
            canvas.Fill(Left + i * Step, top, 22, 14, InkOf(tones[i].Share));
            canvas.Frame(Left + i * Step, top, 22, 14, 1, Ink.Quiet);
            Lettering.Small.Write(canvas, tones[i].Says, Left + i * Step + 30f, top + 12f, Ink.Line);
        }

        string name = Lettering.Large.Fit(job.Description.Unit.Name, canvas.Width / 3f);
        Lettering.Large.Write(canvas, name, Left, canvas.Height - 20f, Ink.Line);
        Lettering.Plain.Write(
            canvas, $"most doubtful layers of {trials.Trials} trials, wanted outline", Left + Lettering.Large.Length(name) + 18f, canvas.Height - 20f, Ink.Quiet);
    }
}
