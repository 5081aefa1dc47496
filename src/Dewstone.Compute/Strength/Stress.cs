namespace Dewstone.Compute.Strength;

/// <summary>A stress, Pa, tension above 0.</summary>
/// <param name="Xx">On x faces along x.</param>
/// <param name="Yy">On y faces along y.</param>
/// <param name="Zz">On z faces along z.</param>
/// <param name="Yz">Shear in the yz plane.</param>
/// <param name="Zx">Shear in the zx plane.</param>
/// <param name="Xy">Shear in the xy plane.</param>
public readonly record struct Stress(double Xx, double Yy, double Zz, double Yz, double Zx, double Xy)
{
    /// <summary>Largest principal stress, Pa: the largest root of the characteristic cubic in trigonometric form.</summary>
    public double LargestPrincipal
    {
        get
        {
            double mean = (Xx + Yy + Zz) / 3.0, x = Xx - mean, y = Yy - mean, z = Zz - mean;
            double second = (x * x + y * y + z * z) / 6.0 + (Yz * Yz + Zx * Zx + Xy * Xy) / 3.0;
            if (second <= 0.0)
            {
                return mean;
            }

            double root = Math.Sqrt(second);
            double third = x * (y * z - Yz * Yz) - Xy * (Xy * z - Yz * Zx) + Zx * (Xy * Yz - y * Zx);
            double cosine = Math.Clamp(0.5 * third / (second * root), -1.0, 1.0);
            return mean + 2.0 * root * Math.Cos(Math.Acos(cosine) / 3.0);
        }
    }
}
