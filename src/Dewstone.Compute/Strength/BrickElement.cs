namespace Dewstone.Compute.Strength;

/// <summary>
/// Stiffness of an 8-node brick with incompatible bending modes, for Young's modulus 1. Rectangular bricks of one grid share it.
/// </summary>
/// <remarks>
/// Linear elastic and isotropic; only for rectangular bricks, on which the incompatible modes pass the patch test. Full 2 x 2 x 2 Gauss integration; the nine
/// modes 1 - xi^2, 1 - eta^2, 1 - zeta^2 of each displacement are condensed: K = Kuu - Kua Kaa^-1 Kau. Source: Wilson, Taylor, Doherty and Ghaboussi, 1973,
/// "Incompatible displacement models"; Taylor, Beresford and Wilson, 1976, "A non-conforming element for stress analysis", International Journal for Numerical
/// Methods in Engineering 10 (both from memory). A brick has three mirror planes, so that in the eight sign patterns of its corners (Walsh functions) the
/// stiffness falls apart into eight 3 x 3 blocks: pattern w of the x displacement goes with w ^ 3 of y and w ^ 5 of z.
/// Corner n has bit 0 set on its far side in x, bit 1 in y, bit 2 in z; degree of freedom 3 n + component.
/// </remarks>
public sealed class BrickElement
{
    /// <summary>Length of what <see cref="Motion"/> writes.</summary>
    internal const int MotionTerms = Freedoms + Modes;

    private const int Corners = 8, Freedoms = 24, Modes = 9;

    private readonly double[] stiffness, modes, sampled;

    /// <summary>Makes the stiffness.</summary>
    /// <param name="x">Edge along x, m.</param>
    /// <param name="y">Edge along y, m.</param>
    /// <param name="z">Edge along z, m.</param>
    /// <param name="poisson">Poisson's ratio, 0 to below 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">An edge or ratio out of range.</exception>
    public BrickElement(double x, double y, double z, double poisson)
    {
        if (!(x > 0.0 && y > 0.0 && z > 0.0) || !(poisson >= 0.0 && poisson < 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(poisson), $"{x} x {y} x {z} m, Poisson's ratio {poisson}: edges are above 0, the ratio from 0 to below 0.5.");
        }

        (EdgeX, EdgeY, EdgeZ) = (x, y, z);
        (double direct, double lateral, double shear) =
            ((1.0 - poisson) / ((1.0 + poisson) * (1.0 - 2.0 * poisson)), poisson / ((1.0 + poisson) * (1.0 - 2.0 * poisson)), 0.5 / (1.0 + poisson));
        (Direct, Lateral, Shear) = (direct, lateral, shear);
        double[,] all = Integrated();
        stiffness = ModeElimination.Condensed(all, Freedoms, Modes);
        modes = ModeElimination.Recovered(all, Freedoms, Modes);
        sampled = Sampled();
        Blocks = InPatterns();
    }

    /// <summary>Edge along x, m.</summary>
    public double EdgeX { get; }

    /// <summary>Edge along y, m.</summary>
    public double EdgeY { get; }

    /// <summary>Edge along z, m.</summary>
    public double EdgeZ { get; }

    /// <summary>Normal stress per strain in its own direction, for Young's modulus 1.</summary>
    public double Direct { get; }

    /// <summary>Normal stress per strain across.</summary>
    public double Lateral { get; }

    /// <summary>Shear stress per engineering shear strain.</summary>
    public double Shear { get; }

    /// <summary>The stiffness in sign patterns: entry 9 w + 3 i + j couples components i and j of pattern w, w ^ 3 and w ^ 5, for sums over corners on both sides.</summary>
    public IReadOnlyList<double> Blocks { get; }

    /// <summary>An entry of the stiffness.</summary>
    /// <param name="row">Degree of freedom, 0 to 23.</param>
    /// <param name="column">Degree of freedom, 0 to 23.</param>
    /// <returns>Force per displacement, for Young's modulus 1, m.</returns>
    public double this[int row, int column] => stiffness[row * Freedoms + column];

    /// <summary>Strain at a Gauss point of a unit displacement of a corner, the modes at the amounts they have in a full brick.</summary>
    /// <param name="gauss">Gauss point, corner order.</param>
    /// <param name="strain">0 to 5: xx, yy, zz, yz, zx, xy; shear as the angle.</param>
    /// <param name="freedom">Degree of freedom, 0 to 23.</param>
    /// <returns>Strain per displacement, 1/m.</returns>
    internal double GaussStrain(int gauss, int strain, int freedom) => sampled[(gauss * 6 + strain) * Freedoms + freedom];

    /// <summary>Stresses in the middles of the eight octants of a brick, corner order.</summary>
    /// <param name="u">Displacements of the corners, 24, in m times Young's modulus in Pa.</param>
    /// <param name="stresses">Eight; overwritten.</param>
    public void Stresses(ReadOnlySpan<double> u, Span<Stress> stresses)
    {
        Span<double> motion = stackalloc double[MotionTerms];
        Motion(u, motion);
        for (int octant = 0; octant < Corners; octant++)
        {
            stresses[octant] = StressAt(motion, (octant & 1) == 0 ? -0.5 : 0.5, (octant & 2) == 0 ? -0.5 : 0.5, (octant & 4) == 0 ? -0.5 : 0.5);
        }
    }

    /// <summary>
    /// Writes displacements of the corners as a sum over the brick: 24 terms xi^a eta^b zeta^c with a, b, c 0 or 1 (bit 0 of a term for xi, 1 for eta, 2 for
    /// zeta), then the amounts of the nine modes.
    /// </summary>
    /// <param name="u">Displacements of the corners, 24.</param>
    /// <param name="motion"><see cref="MotionTerms"/>; overwritten.</param>
    internal void Motion(ReadOnlySpan<double> u, Span<double> motion)
    {
        for (int i = 0; i < Freedoms; i++)
        {
            int pattern = i / 3;
            double sum = 0.0;
            for (int corner = 0; corner < Corners; corner++)
            {
                sum += SignPatterns.Sign(pattern, corner) * u[3 * corner + i % 3];
            }

            motion[i] = 0.125 * SignPatterns.Sign(pattern, 7) * sum;
        }

        for (int m = 0; m < Modes; m++)
        {
            double amount = 0.0;
            for (int i = 0; i < Freedoms; i++)
            {
                amount += modes[m * Freedoms + i] * u[i];
            }

            motion[Freedoms + m] = amount;
        }
    }

    /// <summary>Stress at a point of a brick.</summary>
    /// <param name="motion">What <see cref="Motion"/> gives.</param>
    /// <param name="xi">Place along x, -1 to 1.</param>
    /// <param name="eta">Place along y, -1 to 1.</param>
    /// <param name="zeta">Place along z, -1 to 1.</param>
    /// <returns>The stress.</returns>
    internal Stress StressAt(ReadOnlySpan<double> motion, double xi, double eta, double zeta)
    {
        ReadOnlySpan<double> mode = motion[Freedoms..];
        Span<double> gradient = stackalloc double[9];
        for (int c = 0; c < 3; c++)
        {
            gradient[3 * c] = 2.0 / EdgeX * (motion[3 + c] + eta * motion[9 + c] + zeta * motion[15 + c] + eta * zeta * motion[21 + c] - 2.0 * xi * mode[c]);
            gradient[3 * c + 1] = 2.0 / EdgeY * (motion[6 + c] + xi * motion[9 + c] + zeta * motion[18 + c] + xi * zeta * motion[21 + c] - 2.0 * eta * mode[3 + c]);
            gradient[3 * c + 2] = 2.0 / EdgeZ * (motion[12 + c] + xi * motion[15 + c] + eta * motion[18 + c] + xi * eta * motion[21 + c] - 2.0 * zeta * mode[6 + c]);
        }

        double trace = Lateral * (gradient[0] + gradient[4] + gradient[8]), direct = Direct - Lateral;
        return new Stress(
            direct * gradient[0] + trace, direct * gradient[4] + trace, direct * gradient[8] + trace,
            Shear * (gradient[5] + gradient[7]), Shear * (gradient[2] + gradient[6]), Shear * (gradient[1] + gradient[3]));
    }

    // Stiffness of corners and modes before the modes are condensed, (24 + 9) square.
    private double[,] Integrated()
    {
        double[,] all = new double[Freedoms + Modes, Freedoms + Modes];
        double weight = EdgeX * EdgeY * EdgeZ / 8.0;
        for (int gauss = 0; gauss < Corners; gauss++)
        {
            double[,] strain = StrainAt(gauss);
            for (int i = 0; i < Freedoms + Modes; i++)
            {
                for (int j = 0; j < Freedoms + Modes; j++)
                {
                    all[i, j] += weight * Work(strain, i, j);
                }
            }
        }

        return all;
    }

    private double Work(double[,] strain, int i, int j)
    {
        double trace = (strain[0, i] + strain[1, i] + strain[2, i]) * (strain[0, j] + strain[1, j] + strain[2, j]);
        double direct = strain[0, i] * strain[0, j] + strain[1, i] * strain[1, j] + strain[2, i] * strain[2, j];
        double shear = strain[3, i] * strain[3, j] + strain[4, i] * strain[4, j] + strain[5, i] * strain[5, j];
        return Lateral * trace + (Direct - Lateral) * direct + Shear * shear;
    }

    private double[,] StrainAt(int gauss)
    {
        double point = 1.0 / Math.Sqrt(3.0);
        return Strain((gauss & 1) == 0 ? -point : point, (gauss & 2) == 0 ? -point : point, (gauss & 4) == 0 ? -point : point);
    }

    // Strains xx, yy, zz, yz, zx, xy at the Gauss points of a unit displacement of each corner, the modes at their amounts.
    private double[] Sampled()
    {
        double[] strains = new double[Corners * 6 * Freedoms];
        for (int gauss = 0; gauss < Corners; gauss++)
        {
            double[,] strain = StrainAt(gauss);
            for (int s = 0; s < 6; s++)
            {
                for (int i = 0; i < Freedoms; i++)
                {
                    double sum = strain[s, i];
                    for (int m = 0; m < Modes; m++)
                    {
                        sum += strain[s, Freedoms + m] * modes[m * Freedoms + i];
                    }

                    strains[(gauss * 6 + s) * Freedoms + i] = sum;
                }
            }
        }

        return strains;
    }

    // Strains xx, yy, zz, yz, zx, xy of a unit displacement of each corner and mode at a point of the reference cube.
    private double[,] Strain(double xi, double eta, double zeta)
    {
        double[,] strain = new double[6, Freedoms + Modes];
        for (int corner = 0; corner < Corners; corner++)
        {
            double a = (corner & 1) == 0 ? -1.0 : 1.0, b = (corner & 2) == 0 ? -1.0 : 1.0, c = (corner & 4) == 0 ? -1.0 : 1.0;
            Put(
                strain, 3 * corner,
                a * (1.0 + b * eta) * (1.0 + c * zeta) / (4.0 * EdgeX),
                b * (1.0 + a * xi) * (1.0 + c * zeta) / (4.0 * EdgeY),
                c * (1.0 + a * xi) * (1.0 + b * eta) / (4.0 * EdgeZ));
        }

        Put(strain, Freedoms, -4.0 * xi / EdgeX, 0.0, 0.0);
        Put(strain, Freedoms + 3, 0.0, -4.0 * eta / EdgeY, 0.0);
        Put(strain, Freedoms + 6, 0.0, 0.0, -4.0 * zeta / EdgeZ);
        return strain;
    }

    private static void Put(double[,] strain, int first, double dx, double dy, double dz)
    {
        (strain[0, first], strain[5, first], strain[4, first]) = (dx, dy, dz);
        (strain[1, first + 1], strain[5, first + 1], strain[3, first + 1]) = (dy, dx, dz);
        (strain[2, first + 2], strain[4, first + 2], strain[3, first + 2]) = (dz, dx, dy);
    }

    private double[] InPatterns()
    {
        int[] flips = [0, 3, 5];
        double[] blocks = new double[Corners * 9];
        for (int pattern = 0; pattern < Corners; pattern++)
        {
            for (int i = 0; i < 3; i++)
            {
                for (int j = 0; j < 3; j++)
                {
                    double sum = 0.0;
                    for (int a = 0; a < Corners; a++)
                    {
                        for (int b = 0; b < Corners; b++)
                        {
                            sum += SignPatterns.Sign(pattern ^ flips[i], a) * this[3 * a + i, 3 * b + j] * SignPatterns.Sign(pattern ^ flips[j], b);
                        }
                    }

                    blocks[9 * pattern + 3 * i + j] = sum / (Corners * Corners);
                }
            }
        }

        return blocks;
    }
}
