using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

internal sealed class DoseObjective
{
    private readonly CorrectionField field;
    private readonly Lattice lattice;
    private readonly Parallelism parallelism;
    private readonly Tuning tuning;
    private readonly float low;
    private readonly double threshold;
    private readonly float inverse;
    private readonly float[] weight;
    private readonly double[] kx;
    private readonly double[] kz;
    private readonly int z0;

    public DoseObjective(CorrectionField field, Lattice lattice, double threshold, Parallelism parallelism, Tuning tuning)
    {
        this.field = field;
        this.lattice = lattice;
        this.parallelism = parallelism;
        this.tuning = tuning;
        this.threshold = threshold;
        low = (float)(tuning.SoftLow * threshold);
        inverse = (float)(1.0 / ((tuning.SoftHigh - tuning.SoftLow) * threshold));
        CellGrid grid = field.Grid;
        Residual = new float[grid.Count];
        weight = new float[grid.Count];
        for (int i = 0; i < weight.Length; i++)
        {
            double d = field.Distance[i];
            double a = Math.Min(Math.Abs(d), tuning.DistanceCap);
            weight[i] = (float)((1.0 + a / tuning.Length) * (d < 0.0 ? tuning.InsideWeight : 1.0));
        }

        int n = grid.CellsPerPitch;
        kx = new double[2 * n];
        double rk = tuning.Radius * lattice.PitchMetres;
        for (int a = 0; a < 2 * n; a++)
        {
            double x = (a + 0.5 - n) * grid.CellMetres / rk;
            kx[a] = Elementary.Exp(-x * x);
        }

        int nz = grid.CellsPerLayer;
        double tip = lattice.LayerMetres - lattice.TipDepthMetres + tuning.ZShift * lattice.LayerMetres;
        z0 = (int)Math.Floor(tip / grid.CellHeightMetres - nz + 0.5);
        kz = new double[2 * nz];
        for (int c = 0; c < 2 * nz; c++)
        {
            double z = ((c + z0 + 0.5) * grid.CellHeightMetres - tip) / rk;
            kz[c] = Elementary.Exp(-z * z);
        }
    }

    public float[] Residual { get; }

    public (double Misfit, double Over, double Under) Evaluate(MoistureResult moisture)
    {
        CellGrid grid = field.Grid;
        int plane = grid.Nx * grid.Ny;
        double[] over = new double[grid.Nz], under = new double[grid.Nz];
        float wet = (float)(tuning.WetPrice / threshold), high = (float)(tuning.WetTop / 0.22 * threshold);
        float[] content = moisture.VolumetricWaterContent, fraction = field.Target.Fraction;
        Chunks.Run(grid.Nz, 4, parallelism, (first, end) =>
        {
            for (int z = first; z < end; z++)
            {
                double o = 0, u = 0;
                for (int i = z * plane; i < (z + 1) * plane; i++)
                {
                    float s = Math.Clamp((content[i] - low) * inverse, 0f, 1f);
                    float r = fraction[i] - s - wet * Math.Max(0f, content[i] - high);
                    Residual[i] = r * weight[i];
                    if (r > 0f) { u += r * weight[i]; } else { o -= r * weight[i]; }
                }

                over[z] = o;
                under[z] = u;
            }
        });
        double so = 0, su = 0;
        for (int z = 0; z < grid.Nz; z++) { so += over[z]; su += under[z]; }
        double v = grid.CellCubicMetres * 1000.0;
        return ((so + su) * v, so * v, su * v);
    }

    public void Errors(bool[] active, double[] errors)
    {
        CellGrid grid = field.Grid;
        int n = grid.CellsPerPitch, nz = grid.CellsPerLayer;
        Chunks.Run(lattice.Rows * lattice.Layers, 16, parallelism, (first, end) =>
        {
            for (int row = first; row < end; row++)
            {
                int k = row / lattice.Rows, j = row % lattice.Rows;
                int shift = lattice.IsShifted(k) ? n / 2 : 0;
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = row * lattice.Columns + i;
                    if (!active[index]) { continue; }
                    int x0 = i * n + shift - n / 2, y0 = j * n + shift - n / 2, zz = k * nz + z0;
                    double sum = 0, norm = 0;
                    for (int c = Math.Max(0, -zz); c < 2 * nz && zz + c < grid.Nz; c++)
                    {
                        double sp = 0, np = 0;
                        for (int b = Math.Max(0, -y0); b < 2 * n && y0 + b < grid.Ny; b++)
                        {
                            double sr = 0, nr = 0;
                            int at = ((zz + c) * grid.Ny + y0 + b) * grid.Nx + x0;
                            for (int a = Math.Max(0, -x0); a < 2 * n && x0 + a < grid.Nx; a++)
                            {
                                sr += kx[a] * Residual[at + a];
                                nr += kx[a] * weight[at + a];
                            }

                            sp += kx[b] * sr;
                            np += kx[b] * nr;
                        }

                        sum += kz[c] * sp;
                        norm += kz[c] * np;
                    }

                    errors[index] = norm > 0 ? sum / norm : 0;
                }
            }
        });
    }
}
